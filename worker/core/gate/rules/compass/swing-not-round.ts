import { greatestGapDeg, OPEN_GAP_DEG } from '../../../calc/compass/coverage.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const swingNotRound: Rule = {
  code: 'SWING_NOT_ROUND',
  severity: 'blocks',
  meaning: 'The headings of a swing do not cover the circle, so no card can be calculated',
  remedy: m.readLeastEightHeadings,
  source: PRACTICE,
  check: ({ results }) =>
    hitsIn(['compass', 'swings'], results.compass?.swings, ({ state, readings }) => {
      const gapDeg = greatestGapDeg(readings.map(({ headingDeg }) => headingDeg));
      if (isAtMost(gapDeg, OPEN_GAP_DEG)) return undefined;
      const [gap, most] = figure.plainApart(gapDeg, OPEN_GAP_DEG, 0);
      return {
        field: 'readings',
        sentence: said(m.swingNotRound_headingsLeaveGapCard, { gap, state: termOf(state), most }),
        data: { gapDeg },
      };
    }),
};
