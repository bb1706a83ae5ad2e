import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { DEVIATION_LIMIT_DEG } from '../../deviation-limit.ts';
import { hits, hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const deviationOverLimit: Rule = {
  code: 'DEVIATION_OVER_LIMIT',
  severity: 'blocks',
  meaning: 'The compass deviates more than allowed',
  remedy: m.deviationOverLimit_remedy,
  source: read('14 CFR 27.1327 and the former 23.1327'),
  check: ({ results }) =>
    hitsIn(['compass', 'swings'], results.compass?.swings, ({ state, readings }) =>
      hits(readings, ({ headingDeg, deviationDeg }) => {
        if (isAtMost(Math.abs(deviationDeg), DEVIATION_LIMIT_DEG)) return undefined;
        const [deviation, limit] = figure.plainApart(deviationDeg, DEVIATION_LIMIT_DEG, 0, { signed: true });
        return {
          sentence: said(m.deviationOverLimit_deviationLimit, {
            deviation,
            heading: figure.plain(headingDeg, 0),
            state: termOf(state),
            limit,
          }),
          data: { headingDeg, deviationDeg },
        };
      }),
    ),
};
