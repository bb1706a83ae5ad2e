import { expect } from 'vitest';
import { seededRandom } from './seeded-random.ts';

type Draw = ReturnType<typeof seededRandom>;

const TRIALS = 40_000;
/** The spread of 40 000 trials is itself known to 1/√(2 · 40 000) = 0.35 %; four times that. */
const WITHIN = 0.015;

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Covariance of two lists of trials; with itself, the variance. */
export function covarianceOf(a: readonly number[], b: readonly number[]): number {
  const [meanA, meanB] = [meanOf(a), meanOf(b)];
  return a.reduce((sum, value, index) => sum + (value - meanA) * ((b[index] ?? 0) - meanB), 0) / (a.length - 1);
}

/** Results of many trials, each with quantities as they might have been (JCGM 101, clause 6). */
export function trialsOf<Result>(trial: (draw: Draw) => Result): Result[] {
  const draw = seededRandom(101);
  return Array.from({ length: TRIALS }, () => trial(draw));
}

/** Standard deviation of trials. */
export function spreadOf(trials: readonly number[]): number {
  return Math.sqrt(covarianceOf(trials, trials));
}

/** Expects a standard uncertainty to be the spread of trials. */
export function expectSpread(trials: readonly number[], standard: number): void {
  expect(standard).toBeGreaterThan(0);
  expect(Math.abs(spreadOf(trials) / standard - 1)).toBeLessThan(WITHIN);
}
