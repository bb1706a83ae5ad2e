import { wrap360 } from '../../units/angle.ts';
import { isAtLeast } from '../numbers/limit-met.ts';

// A swing that does not go round makes no card: least squares over part of the circle fit the readings and say
// anything elsewhere. So no coefficients beyond a gap of 120°, D and E only from six headings without a gap of 90°,
// and the card is compared with the limit of the readings.

/** Two of eight even steps: one heading of them may be missing if more were read elsewhere. */
export const WIDE_GAP_DEG = 90;

/**
 * Three even steps are the minimum that covers a circle: in a wider gap nothing determines the curve, and its values on
 * headings that nobody swung are not deviations of the compass.
 */
export const OPEN_GAP_DEG = 120;

/**
 * Returns the largest gap between headings, in degrees; the whole circle if none was read.
 *
 * @returns 0 to 360
 * @source definition
 */
export function greatestGapDeg(headingsDeg: readonly number[]): number {
  const sorted = headingsDeg.map(wrap360).sort((a, b) => a - b);
  const [first] = sorted;
  if (first === undefined) return 360;
  return Math.max(...sorted.map((heading, index) => (sorted[index + 1] ?? first + 360) - heading));
}

/**
 * Counts headings with a min. angle between them, round from the first: two readings in one direction count as
 * one.
 *
 * @source our own
 */
export function headingsApart(headingsDeg: readonly number[], apartDeg: number): number {
  const [first = 0, ...rest] = headingsDeg.map(wrap360).sort((a, b) => a - b);
  let [count, last] = [1, first];
  for (const heading of rest) {
    if (!isAtLeast(heading - last, apartDeg) || !isAtLeast(first + 360 - heading, apartDeg)) continue;
    [count, last] = [count + 1, heading];
  }
  return count;
}
