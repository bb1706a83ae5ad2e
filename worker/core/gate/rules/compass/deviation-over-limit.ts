import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { DEVIATION_LIMIT_DEG } from '../../deviation-limit.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const deviationOverLimit: Rule = {
  code: 'DEVIATION_OVER_LIMIT',
  severity: 'blocks',
  meaning: 'The compass deviates more than is allowed',
  remedy: m.deviationOverLimit_remedy,
  source: read('14 CFR 27.1327 and the former 23.1327'),
  check: ({ results }) =>
    (results.compass?.swings ?? []).flatMap(({ state, readings }, index) =>
      readings.flatMap(({ headingDeg, deviationDeg }): Hit[] => {
        if (isAtMost(Math.abs(deviationDeg), DEVIATION_LIMIT_DEG)) return [];
        const [deviation, limit] = figure.plainApart(deviationDeg, DEVIATION_LIMIT_DEG, 0, { signed: true });
        return [
          {
            path: ['compass', 'swings', index],
            sentence: said(m.deviationOverLimit_deviationLimit, {
              deviation,
              heading: figure.plain(headingDeg, 0),
              state: termOf(state),
              limit,
            }),
            data: { headingDeg, deviationDeg },
          },
        ];
      }),
    ),
};
