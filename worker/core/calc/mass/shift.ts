/**
 * Returns the mass to move for a wanted shift of the centre of gravity: m = M · Δx / d.
 *
 * The total stays the same, so the divisor is the distance moved. A mass that is added or removed changes the total:
 * see `ballastToAddKg` and `massToRemoveKg`.
 *
 * @param shiftMm wanted shift, aft positive
 * @param distanceMm way of the mass, aft positive
 * @returns kg; undefined if the way is nil, goes to the other side, or takes more than the total
 * @source derived from sums of moments; checked against a new balance and examination items, read
 * @example massToMoveKg({ totalKg: 6603, shiftMm: 100, distanceMm: 2900 })  // 227.7
 */
export function massToMoveKg(given: { totalKg: number; shiftMm: number; distanceMm: number }): number | undefined {
  const { totalKg, shiftMm, distanceMm } = given;
  if (shiftMm === 0) return 0;
  const movedKg = (totalKg * shiftMm) / distanceMm;
  return movedKg > 0 && movedKg <= totalKg ? movedKg : undefined;
}

/**
 * Returns the shift of the centre of gravity by a mass that is moved on board: Δx = m · d / M.
 *
 * @param distanceMm way of the mass, aft positive; the same holds sideways and for heights
 * @returns mm, in the sense of the way; not finite without a total
 * @source derived from sums of moments; checked against a new balance and examination items, read
 * @example shiftByMovedMm({ totalKg: 24_200, movedKg: 500, distanceMm: -3988 })  // −82.4
 */
export function shiftByMovedMm(given: { totalKg: number; movedKg: number; distanceMm: number }): number {
  return (given.movedKg * given.distanceMm) / given.totalKg;
}
