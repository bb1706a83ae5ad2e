import { greatestGapDeg, OPEN_GAP_DEG, WIDE_GAP_DEG } from '../../../calc/compass/coverage.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

const MIN_HEADINGS = 8;

export const swingHeadingsTooFew: Rule = {
  code: 'SWING_HEADINGS_TOO_FEW',
  severity: 'caution',
  meaning: 'Too few headings were read for a card of every 30°, or they leave a wide gap',
  remedy: m.readLeastEightHeadings,
  source: read('former 23.1547 (card in steps of not more than 30°)'),
  check: ({ results }) =>
    hitsIn(['compass', 'swings'], results.compass?.swings, ({ state, readings }) => {
      if (readings.length < MIN_HEADINGS)
        return {
          field: 'readings',
          sentence: said(m.swingHeadingsTooFew_onlyHeadingsRead, { count: readings.length, state: termOf(state) }),
          data: { readings: readings.length },
        };
      const gapDeg = greatestGapDeg(readings.map(({ headingDeg }) => headingDeg));
      if (isAtMost(gapDeg, WIDE_GAP_DEG) || !isAtMost(gapDeg, OPEN_GAP_DEG)) return undefined;
      return {
        field: 'readings',
        sentence: said(m.swingHeadingsTooFew_noHeadingReadOver, {
          gap: figure.plain(gapDeg, 0),
          state: termOf(state),
        }),
        data: { gapDeg },
      };
    }),
};
