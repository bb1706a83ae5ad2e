import { greatestGapDeg, OPEN_GAP_DEG, WIDE_GAP_DEG } from '../../../calc/compass/coverage.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

const MIN_HEADINGS = 8;

export const swingHeadingsTooFew: Rule = {
  code: 'SWING_HEADINGS_TOO_FEW',
  severity: 'caution',
  meaning: 'Too few headings were read for a card of every 30°, or they leave a wide gap',
  remedy: m.readLeastEightHeadings,
  source: read('former 23.1547 (card in steps of not more than 30°)'),
  check: ({ results }) =>
    (results.compass?.swings ?? []).flatMap(({ state, readings }, index): Hit[] => {
      const path = ['compass', 'swings', index, 'readings'];
      if (readings.length < MIN_HEADINGS)
        return [
          {
            path,
            sentence: said(m.swingHeadingsTooFew_onlyHeadingsRead, { count: readings.length, state: termOf(state) }),
            data: { readings: readings.length },
          },
        ];
      const gapDeg = greatestGapDeg(readings.map(({ headingDeg }) => headingDeg));
      return isAtMost(gapDeg, WIDE_GAP_DEG) || !isAtMost(gapDeg, OPEN_GAP_DEG)
        ? []
        : [
            {
              path,
              sentence: said(m.swingHeadingsTooFew_noHeadingReadOver, {
                gap: figure.plain(gapDeg, 0),
                state: termOf(state),
              }),
              data: { gapDeg },
            },
          ];
    }),
};
