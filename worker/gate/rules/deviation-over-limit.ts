import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

/** Deviation in level flight on any heading. */
const LIMIT_DEG = 10;

export const deviationOverLimit: Rule = {
  code: 'DEVIATION_OVER_LIMIT',
  severity: 'blocks',
  meaning: 'The compass deviates more than is allowed',
  remedy: phrase`Compensate it, or find what disturbs it, and swing again`,
  source: read('14 CFR 27.1327 and the former 23.1327'),
  check: ({ results, say }) =>
    (results.compass?.swings ?? []).flatMap(({ state, readings }, index) =>
      readings.flatMap(({ headingDeg, deviationDeg }): Hit[] =>
        isAtMost(Math.abs(deviationDeg), LIMIT_DEG)
          ? []
          : [
              {
                path: ['compass', 'swings', index],
                sentence: say.words`Deviation ${say.signed(deviationDeg, 1)}° on ${say.plain(headingDeg, 0)}° (${say.term(state)}); the limit is ${LIMIT_DEG}°`,
                data: { headingDeg, deviationDeg },
              },
            ],
      ),
    ),
};
