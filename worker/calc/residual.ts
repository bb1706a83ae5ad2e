import { isAtMost } from './limit-met.ts';
import type { Comparison, Prediction } from './prediction.ts';
import { COVERAGE_FACTOR } from './uncertainty.ts';
import type { WeighingResult } from './weighing.ts';

/** What the scales felt beyond papers, survey and changes: a mass somewhere, never an item. */
export interface Residual {
  massKg: number;
  /** k = 2. */
  expandedKg: number;
  /** Where such a mass would sit; undefined when the mass cannot be told from scatter. */
  armMm: number | undefined;
  /** The mass is more than its expanded uncertainty. */
  isTold: boolean;
}

/**
 * Residual of the weighing: r = weighed − predicted, U(r) = k·u(r); its arm is that of the difference of the moments.
 *
 * @source JCGM 100:2008 (GUM), 5.1.2, from memory; the arm is the definition of a moment
 */
export function residualOf(weighing: WeighingResult, prediction: Prediction, comparison: Comparison): Residual {
  const massKg = comparison.differenceKg;
  const expandedKg = COVERAGE_FACTOR * comparison.standard.massKg;
  const isTold = !isAtMost(Math.abs(massKg), expandedKg);
  const armMm = isTold ? (weighing.empty.momentKgMm - prediction.momentKgMm) / massKg : undefined;
  return { massKg, expandedKg, armMm, isTold };
}
