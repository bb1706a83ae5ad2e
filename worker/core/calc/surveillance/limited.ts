import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { Difference, Figure, LimitCheck } from './surveillance-result.ts';

export type { LimitCheck } from './surveillance-result.ts';

/**
 * Compares a value with its limits; both ends count as within.
 *
 * @source definition
 */
export function limited(
  figure: Figure,
  value: number,
  unit: string,
  { least, most }: { least?: number; most?: number },
): LimitCheck {
  const [lower, upper] = [least ?? Number.NEGATIVE_INFINITY, most ?? Number.POSITIVE_INFINITY];
  const isWithin = isAtLeast(value, lower) && isAtMost(value, upper);
  return { figure, value, unit, ...(least !== undefined && { least }), ...(most !== undefined && { most }), isWithin };
}

/**
 * Compares a difference with a tolerance in both directions.
 *
 * @source definition
 */
export function limitedDifference(figure: Figure, terms: Difference, unit: string, tolerance: number): LimitCheck {
  return { ...limited(figure, terms.read - terms.against, unit, { least: -tolerance, most: tolerance }), terms };
}
