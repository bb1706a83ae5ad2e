import { isAtLeast, isAtMost } from '../limit-met.ts';
/** A figure against its limits; `least` and `most` are undefined where there is none. */
export interface Limited {
  name: string;
  /** The altitude or pressure at which it was read. */
  at?: { value: number; unit: string };
  value: number;
  unit: string;
  least?: number;
  most?: number;
  isWithin: boolean;
  /** Where the figure is a difference: what was read, less what it is held against. */
  terms?: Difference;
}

export interface Difference {
  read: number;
  against: number;
}

/**
 * A value held against its limits; both ends count as within.
 *
 * @source definition
 */
export function limited(
  name: string,
  value: number,
  unit: string,
  { least, most }: { least?: number; most?: number },
): Limited {
  const [lower, upper] = [least ?? Number.NEGATIVE_INFINITY, most ?? Number.POSITIVE_INFINITY];
  const isWithin = isAtLeast(value, lower) && isAtMost(value, upper);
  return { name, value, unit, ...(least !== undefined && { least }), ...(most !== undefined && { most }), isWithin };
}

/**
 * A difference held against a tolerance to both sides.
 *
 * @source definition
 */
export function limitedDifference(name: string, terms: Difference, unit: string, tolerance: number): Limited {
  return { ...limited(name, terms.read - terms.against, unit, { least: -tolerance, most: tolerance }), terms };
}
