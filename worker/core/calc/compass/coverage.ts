import { wrap360 } from '../../units/angle.ts';
import { isAtLeast } from '../numbers/limit-met.ts';

/** Two of eight even steps: one heading of them may be missing where more were read elsewhere. */
export const WIDE_GAP_DEG = 90;

/**
 * Three even steps are the least that go round a circle: with a wider gap nothing holds the curve there, and what it gives on
 * headings that nobody swung is no deviation of the compass.
 */
export const OPEN_GAP_DEG = 120;

/**
 * The widest part of the circle, in degrees, in which no heading lies; the whole circle where none was read.
 *
 * @source definition
 */
export function greatestGapDeg(headingsDeg: readonly number[]): number {
  const sorted = headingsDeg.map(wrap360).sort((a, b) => a - b);
  const [first] = sorted;
  if (first === undefined) return 360;
  return Math.max(...sorted.map((heading, index) => (sorted[index + 1] ?? first + 360) - heading));
}

/**
 * How many headings lie apart by so much, counted round from the first: what is read twice in one direction tells of one.
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
