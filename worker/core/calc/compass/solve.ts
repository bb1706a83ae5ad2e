/**
 * Solves a small system of linear equations by elimination with row exchange.
 *
 * @returns undefined if the equations do not determine the unknowns
 * @source Gauss–Jordan elimination with partial pivoting, from memory
 */
export function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  const rows = matrix.map((row, index) => [...row, right[index] ?? 0]);
  const size = rows.length;
  for (let column = 0; column < size; column++) {
    const rest = rows.slice(column);
    const pivot = rest.reduce((best, row) => (Math.abs(row[column] ?? 0) > Math.abs(best[column] ?? 0) ? row : best));
    const lead = pivot[column] ?? 0;
    if (!(Math.abs(lead) > 1e-9)) return undefined;
    rows.splice(rows.indexOf(pivot), 1);
    rows.splice(column, 0, pivot);
    for (const row of rows) {
      if (row === pivot) continue;
      const share = (row[column] ?? 0) / lead;
      for (let k = column; k <= size; k++) row[k] = (row[k] ?? 0) - share * (pivot[k] ?? 0);
    }
  }
  return rows.map((row, index) => (row[size] ?? 0) / (row[index] ?? 1));
}
