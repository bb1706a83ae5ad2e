import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

const LARGE_DEG = 3;

export const coefficientALarge: Rule = {
  code: 'COEFFICIENT_A_LARGE',
  severity: 'caution',
  meaning: 'The compass is turned in its mounting, or the reference was off',
  remedy: phrase`Turn the compass, or check the reference`,
  source: PRACTICE,
  check: ({ results, say }) =>
    (results.compass?.swings ?? []).flatMap(({ state, coefficients }, index): Hit[] =>
      !coefficients || isAtMost(Math.abs(coefficients.A), LARGE_DEG)
        ? []
        : [
            {
              path: ['compass', 'swings', index],
              sentence: say.words`Coefficient A is ${say.signed(coefficients.A, 1)}° (${say.term(state)})`,
              data: { A: coefficients.A },
            },
          ],
    ),
};
