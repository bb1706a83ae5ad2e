// Rows may come in any order, because a certificate often starts at the top. Two rows with one abscissa are refused:
// sorting cannot resolve a contradiction.

/**
 * Interpolates linearly in a table, in any order of its rows; constant at its first and last value outside, 0 in an
 * empty table. Two rows with one x contradict each other: the release check refuses them in every table of a record.
 *
 * @param xOf, yOf abscissa and ordinate of a row
 * @source definition of the straight line between two points
 * @example interpolate([[0, 1], [10, 2]], 5, (row) => row[0], (row) => row[1])  // 1.5
 */
export function interpolate<Row>(
  table: readonly Row[],
  x: number,
  xOf: (row: Row) => number,
  yOf: (row: Row) => number,
): number {
  const rising = isRising(table, xOf) ? table : table.toSorted((a, b) => xOf(a) - xOf(b));
  let left = rising[0];
  if (left === undefined) return 0;
  for (const right of rising) {
    if (xOf(right) >= x) {
      const [from, to] = [xOf(left), xOf(right)];
      return to === from ? yOf(right) : yOf(left) + ((x - from) / (to - from)) * (yOf(right) - yOf(left));
    }
    left = right;
  }
  return yOf(left);
}

/** Nearly every table is, and tanks are evaluated thousands of times for one loading sheet. */
function isRising<Row>(table: readonly Row[], xOf: (row: Row) => number): boolean {
  for (let index = 1; index < table.length; index++)
    if (xOf(table[index] as Row) < xOf(table[index - 1] as Row)) return false;
  return true;
}

/**
 * Returns the first x that two rows of a table share; undefined if every row has its own.
 *
 * @source definition
 */
export function sharedX<Row>(table: readonly Row[], xOf: (row: Row) => number): number | undefined {
  const seen = new Set<number>();
  return table.map(xOf).find((x) => seen.size === seen.add(x).size);
}
