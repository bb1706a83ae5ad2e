import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

const LARGE_DEG = 3;

export const coefficientALarge: Rule = {
  code: 'COEFFICIENT_A_LARGE',
  severity: 'caution',
  meaning: 'The compass is turned in its mounting, or the reference was off',
  remedy: m.coefficientALarge_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    (results.compass?.swings ?? []).flatMap(({ state, coefficients }, index): Hit[] =>
      !coefficients || isAtMost(Math.abs(coefficients.A), LARGE_DEG)
        ? []
        : [
            {
              path: ['compass', 'swings', index],
              sentence: said(m.coefficientALarge_coefficient, {
                a: figure.signed(coefficients.A, 1),
                state: termOf(state),
              }),
              data: { A: coefficients.A },
            },
          ],
    ),
};
