import { isAtMost } from '../numbers/limit-met.ts';
import { COVERAGE_FACTOR } from '../weighing/uncertainty.ts';
import type { WeighingResult } from '../weighing/weighing-result.ts';
import type { Comparison, Prediction, Residual } from './prediction-result.ts';

export type { Residual } from './prediction-result.ts';

/**
 * Returns the residual of the weighing: r = weighed − predicted, U(r) = k·u(r); its arm follows from the difference of
 * the moments.
 *
 * @source JCGM 100:2008 (GUM), 5.1.2, read in NIST/SEMATECH 2.5.7; the arm is the definition of a moment
 */
export function residualOf(weighing: WeighingResult, prediction: Prediction, comparison: Comparison): Residual {
  const massKg = comparison.differenceKg;
  const expandedKg = COVERAGE_FACTOR * comparison.standard.massKg;
  const isTold = !isAtMost(Math.abs(massKg), expandedKg);
  const armMm = isTold ? (weighing.empty.momentKgMm - prediction.momentKgMm) / massKg : undefined;
  return { massKg, expandedKg, armMm, isTold };
}
