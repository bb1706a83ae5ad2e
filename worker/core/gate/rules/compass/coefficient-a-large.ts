import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

const LARGE_DEG = 3;

export const coefficientALarge: Rule = {
  code: 'COEFFICIENT_A_LARGE',
  severity: 'caution',
  meaning: 'The compass is turned in its mounting, or the reference was wrong',
  remedy: m.coefficientALarge_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hitsIn(['compass', 'swings'], results.compass?.swings, ({ state, coefficients }) => {
      if (!coefficients || isAtMost(Math.abs(coefficients.A), LARGE_DEG)) return undefined;
      return {
        sentence: said(m.coefficientALarge_coefficient, {
          a: figure.signed(coefficients.A, 1),
          state: termOf(state),
        }),
        data: { A: coefficients.A },
      };
    }),
};
