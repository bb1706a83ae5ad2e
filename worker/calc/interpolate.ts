/**
 * Piecewise linear interpolation in a table of rising x; held at its first and last value outside, 0 in an empty table.
 *
 * @param xOf, yOf how a row gives its abscissa and its ordinate
 * @source definition of the straight line between two points
 * @example interpolate([[0, 1], [10, 2]], 5, (row) => row[0], (row) => row[1])  // 1.5
 */
export function interpolate<Row>(
  table: readonly Row[],
  x: number,
  xOf: (row: Row) => number,
  yOf: (row: Row) => number,
): number {
  let left = table[0];
  if (left === undefined) return 0;
  for (const right of table) {
    if (xOf(right) >= x) {
      const [from, to] = [xOf(left), xOf(right)];
      return to === from ? yOf(right) : yOf(left) + ((x - from) / (to - from)) * (yOf(right) - yOf(left));
    }
    left = right;
  }
  return yOf(left);
}
