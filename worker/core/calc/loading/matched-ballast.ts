import { interpolate } from '../numbers/interpolate.ts';
import { isAtMost } from '../numbers/limit-met.ts';

/** A line of a manual's table of tail ballast that balances the water in the wings. */
export interface MatchedRow {
  wingWaterKg: number;
  tailBallastKg: number;
}

/**
 * Returns the tail ballast that matches the water in the wings, by the table of the manual and straight between its
 * lines; no wing water, no tail ballast.
 *
 * The arm of wing water moves with the content, so one arm for all contents does not give the table.
 *
 * @returns kg; undefined above the last line, for negative water and without a table
 * @source the table is the manufacturer’s; straight lines as in interpolate(); checked against a new balance
 */
export function matchedTailBallastKg(table: readonly MatchedRow[], wingWaterKg: number): number | undefined {
  const largestKg = Math.max(...table.map((row) => row.wingWaterKg));
  if (!(wingWaterKg >= 0 && isAtMost(wingWaterKg, largestKg))) return undefined;
  const hasEmptyRow = table.some((row) => row.wingWaterKg === 0);
  return interpolate(
    hasEmptyRow ? table : [{ wingWaterKg: 0, tailBallastKg: 0 }, ...table],
    wingWaterKg,
    (row) => row.wingWaterKg,
    (row) => row.tailBallastKg,
  );
}

/**
 * Compares a filling of the tail tank with its table: more than the match moves the centre of gravity aft. Less is
 * permitted: the centre of gravity is then further forward.
 *
 * For a tank that balances wing water and nothing else. A permanent tail tank, or one that balances a rear seat,
 * changes the min. pilot instead: see `trimFactor`.
 *
 * @param toleranceKg of the filling: one mark of the tank
 * @returns undefined above the last line of the table
 * @source derived from glider flight manuals, read: up to the table, and never without wing water
 */
export function tailFilling(given: {
  table: readonly MatchedRow[];
  wingWaterKg: number;
  tailBallastKg: number;
  toleranceKg?: number;
}): { matchedKg: number; overKg: number; isAllowed: boolean } | undefined {
  const { table, wingWaterKg, tailBallastKg, toleranceKg = 0 } = given;
  const matchedKg = matchedTailBallastKg(table, wingWaterKg);
  if (matchedKg === undefined) return undefined;
  const allowedKg = wingWaterKg > 0 ? matchedKg + toleranceKg : 0;
  return { matchedKg, overKg: Math.max(0, tailBallastKg - matchedKg), isAllowed: isAtMost(tailBallastKg, allowedKg) };
}
