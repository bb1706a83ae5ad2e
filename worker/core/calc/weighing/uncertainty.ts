import type { MassArmUncertainty } from '../mass/mass-result.ts';
import type { Contribution } from './weighing-result.ts';

export type { MassArmUncertainty } from '../mass/mass-result.ts';
export type { Contribution } from './weighing-result.ts';

/** First-order propagation of uncertainty: JCGM 100:2008 (GUM), clauses 4.2, 4.3.7, 5.1.2. */

/** Coverage factor of every expanded uncertainty in a pack: about 95 %. */
export const COVERAGE_FACTOR = 2;

/**
 * Returns the standard uncertainty of a quantity known to lie within ± a limit (rectangular distribution): u = a / √3.
 *
 * @returns in the unit of the limit
 * @source JCGM 100:2008 (GUM), 4.3.7, read in a laboratory guide; agrees with its example H.1, read as restated
 * @example rectangular(0.3)  // 0.173
 */
export function rectangular(limit: number): number {
  return limit / Math.sqrt(3);
}

/**
 * Returns the standard uncertainty of one reading of a display with steps of d: u = d / √12.
 *
 * @returns in the unit of the step
 * @source JCGM 100:2008 (GUM), F.2.2.1, from memory
 * @example resolution(0.1)  // 0.0289
 */
export function resolution(step: number): number {
  return step / Math.sqrt(12);
}

/**
 * Returns the mean of repeated readings.
 *
 * @returns NaN for no readings
 * @source JCGM 100:2008 (GUM), 4.2.1, from memory
 * @example meanOf([1, 2, 6])  // 3
 */
export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/**
 * Returns the standard uncertainty of the mean of n readings: u = s / √n. Zero for fewer than two readings, which show
 * no scatter.
 *
 * @source JCGM 100:2008 (GUM), 4.2.3, read in course material
 * @example standardErrorOfMean([1, 2, 3])  // 0.577
 */
export function standardErrorOfMean(values: readonly number[]): number {
  if (values.length < 2) return 0;
  const mean = meanOf(values);
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
  return Math.sqrt(variance / values.length);
}

/** A standard uncertainty with the sensitivities of mass and moment to its quantity. */
export type Influence = Pick<Contribution, 'standard' | 'massSensitivity' | 'momentSensitivity'>;

/**
 * Combines independent contributions for a mass and the centre of gravity that follows from it.
 *
 * u²(m) = Σ (∂m/∂q · u)²        u²(x) = Σ ((∂M/∂q − x·∂m/∂q) / m · u)²
 *
 * @param massKg more than zero
 * @returns standard uncertainties in kg and mm
 * @source JCGM 100:2008 (GUM), 5.1.2, read in NIST/SEMATECH 2.5.7, with x = M/m; agrees with its example H.1, read as restated
 */
export function combine(contributions: readonly Influence[], massKg: number, armMm: number): MassArmUncertainty {
  let massVariance = 0;
  let armVariance = 0;
  for (const { standard, massSensitivity, momentSensitivity } of contributions) {
    massVariance += (massSensitivity * standard) ** 2;
    armVariance += (((momentSensitivity - armMm * massSensitivity) / massKg) * standard) ** 2;
  }
  return { massKg: Math.sqrt(massVariance), armMm: Math.sqrt(armVariance) };
}
