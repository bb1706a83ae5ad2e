import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { DEVIATION_LIMIT_DEG } from '../deviation-limit.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const deviationOverLimit: Rule = {
  code: 'DEVIATION_OVER_LIMIT',
  severity: 'blocks',
  meaning: 'The compass deviates more than is allowed',
  remedy: phrase`Compensate it, or find what disturbs it, and swing again`,
  source: read('14 CFR 27.1327 and the former 23.1327'),
  check: ({ results, say }) =>
    (results.compass?.swings ?? []).flatMap(({ state, readings }, index) =>
      readings.flatMap(({ headingDeg, deviationDeg }): Hit[] => {
        if (isAtMost(Math.abs(deviationDeg), DEVIATION_LIMIT_DEG)) return [];
        const [deviation, limit] = say.plainApart(deviationDeg, DEVIATION_LIMIT_DEG, 0, { signed: true });
        return [
          {
            path: ['compass', 'swings', index],
            sentence: say.words`Deviation ${deviation}° on ${say.plain(headingDeg, 0)}° (${say.term(state)}); the limit is ${limit}°`,
            data: { headingDeg, deviationDeg },
          },
        ];
      }),
    ),
};
