import { radians } from '../../units/angle.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import type { Coefficients, Correction } from './compass-result.ts';
import { greatestGapDeg, headingsApart, OPEN_GAP_DEG, WIDE_GAP_DEG } from './coverage.ts';
import { solve } from './solve.ts';

export type { Coefficients } from './compass-result.ts';

/** Deviation on one magnetic heading; east is positive. */
export interface Deviation {
  headingDeg: number;
  deviationDeg: number;
}

const TERMS = [
  () => 1,
  (theta: number) => Math.sin(theta),
  (theta: number) => Math.cos(theta),
  (theta: number) => Math.sin(2 * theta),
  (theta: number) => Math.cos(2 * theta),
] as const;

/**
 * Min. number of headings that determine all five coefficients with some redundancy; fewer give only A, B and C. Two
 * closer headings count as one.
 */
const ENOUGH_FOR_FIVE = 6;
const APART_DEG = 20;

/**
 * Fits coefficients A to E by least squares over all headings. D and E turn twice in a circle, so a gap of more than a
 * quarter of it leaves them undetermined; a gap of more than a third leaves all of them undetermined.
 *
 * deviation = A + B·sin θ + C·cos θ + D·sin 2θ + E·cos 2θ
 *
 * @returns degrees; undefined if the headings do not cover the circle, or do not determine even A, B and C
 * @source model: Handbook of Magnetic Compass Adjustment (Pub. 226), art. 501; the limits of the gaps are our own
 */
export function coefficientsOf(deviations: readonly Deviation[]): Coefficients | undefined {
  const headings = deviations.map(({ headingDeg }) => headingDeg);
  const gapDeg = greatestGapDeg(headings);
  if (!isAtMost(gapDeg, OPEN_GAP_DEG)) return undefined;
  const isEnough = headingsApart(headings, APART_DEG) >= ENOUGH_FOR_FIVE && isAtMost(gapDeg, WIDE_GAP_DEG);
  const five = isEnough ? leastSquares(deviations, 5) : undefined;
  const found = five ?? leastSquares(deviations, 3);
  if (!found) return undefined;
  const [A = 0, B = 0, C = 0, D = 0, E = 0] = found;
  return { A, B, C, D, E };
}

/** Solves the normal equations (Tᵀ·T)·k = Tᵀ·d. */
function leastSquares(deviations: readonly Deviation[], terms: number): number[] | undefined {
  const rows = deviations.map(({ headingDeg }) => TERMS.slice(0, terms).map((term) => term(radians(headingDeg))));
  const dot = (value: (row: number) => number): number => rows.reduce((sum, _row, index) => sum + value(index), 0);
  const columns = Array.from({ length: terms }, (_, column) => column);
  const at = (row: number, column: number): number => rows[row]?.[column] ?? 0;
  const matrix = columns.map((i) => columns.map((j) => dot((row) => at(row, i) * at(row, j))));
  const right = columns.map((i) => dot((row) => at(row, i) * (deviations[row]?.deviationDeg ?? 0)));
  return solve(matrix, right);
}

/**
 * Returns the deviation in degrees that the coefficients give on a heading.
 *
 * @source model: Handbook of Magnetic Compass Adjustment (Pub. 226), art. 501
 */
export function deviationAt({ A, B, C, D, E }: Coefficients, headingDeg: number): number {
  const theta = radians(headingDeg);
  return A + B * Math.sin(theta) + C * Math.cos(theta) + D * Math.sin(2 * theta) + E * Math.cos(2 * theta);
}

/**
 * Returns the corrections from the four cardinal headings: B = (E − W) / 2, C = (N − S) / 2; on south the compass is
 * set to its reading less C, on west to its reading less B.
 *
 * @returns undefined if a cardinal heading was not read within 5°
 * @source worksheets in the style of CAP 562, read as reproduced
 */
export function correctionOf(
  readings: readonly { headingDeg: number; compassDeg: number; deviationDeg: number }[],
): Correction | undefined {
  const near = (cardinal: number) =>
    readings.find(({ headingDeg }) => Math.abs(((headingDeg - cardinal + 540) % 360) - 180) <= 5);
  const [north, east, south, west] = [near(0), near(90), near(180), near(270)];
  if (!north || !east || !south || !west) return undefined;
  const B = (east.deviationDeg - west.deviationDeg) / 2;
  const C = (north.deviationDeg - south.deviationDeg) / 2;
  return { B, C, setSouthDeg: south.compassDeg - C, setWestDeg: west.compassDeg - B };
}
