export const NO_BOUND = Number.POSITIVE_INFINITY;

/** Coefficients and values below this are binary rounding. */
const CLOSE = 1e-9;

/** A tableau of the simplex method with bounded variables: masses first, then the slack of each row. */
export interface Simplex {
  /** Number of masses. */
  size: number;
  table: number[][];
  /** Column in the basis of each row, and its value. */
  basis: number[];
  values: number[];
  /** Upper bound of each column, and whether the column is at it while outside the basis. */
  bounds: number[];
  isUp: boolean[];
  isBasic: Set<number>;
  /** What a unit of each column adds to the total mass and to the total cost. */
  gainOfMass: number[];
  gainOfCost: number[];
}

/** Returns the masses of a tableau. */
export function solutionOf({ size, bounds, isUp, basis, values }: Simplex): number[] {
  const x = Array.from({ length: size }, (_, column) => (isUp[column] ? (bounds[column] ?? 0) : 0));
  for (const [row, column] of basis.entries()) if (column < size) x[column] = values[row] ?? 0;
  return x;
}

/** A column that enters the basis in place of that of a row, which then is at its bound (up) or at zero. */
interface Exchange {
  row: number;
  entering: number;
  leavesUp: boolean;
}

/** Changes the basis; the values of its columns are for the caller. */
export function enterBasis(simplex: Simplex, { row, entering, leavesUp }: Exchange): void {
  const { basis, isUp, isBasic } = simplex;
  const left = basis[row] ?? 0;
  isUp[left] = leavesUp;
  isUp[entering] = false;
  basis[row] = entering;
  isBasic.delete(left);
  isBasic.add(entering);
  eliminate(simplex, row, entering);
}

/** Makes a column the unit vector of a row, by Gauss and Jordan. */
function eliminate({ table, gainOfMass, gainOfCost }: Simplex, pivotRow: number, column: number): void {
  const pivotLine = table[pivotRow] ?? [];
  const pivot = pivotLine[column] ?? 1;
  for (let index = 0; index < pivotLine.length; index++) pivotLine[index] = (pivotLine[index] ?? 0) / pivot;
  for (const line of [...table, gainOfMass, gainOfCost]) {
    const factor = line[column] ?? 0;
    if (line === pivotLine || factor === 0) continue;
    for (let index = 0; index < line.length; index++)
      line[index] = (line[index] ?? 0) - factor * (pivotLine[index] ?? 0);
  }
}

/**
 * Brings a tableau, whose masses are all zero, to the lowest total mass that meets every row, at its min. cost. Rows that
 * zero masses break are those that demand a load: ballast that must follow from water, or a minimum flying mass.
 *
 * @returns false if no masses meet all rows
 * @source dual simplex method (C. Lemke, 1954), from memory: with nothing aboard no mass gains, so that the tableau is dual
 *   feasible; checked against every corner by tests/core/calc/loading/crossing-limits.test.ts
 */
export function feasibleAtLowestMass(simplex: Simplex): boolean {
  const { table, values, bounds, isUp } = simplex;
  for (let step = 0; step < 40 * (bounds.length + 1); step++) {
    const broken = mostBroken(simplex);
    if (!broken) {
      for (const [row, value] of values.entries()) values[row] = Math.max(0, value);
      return true;
    }
    const { row, overBy } = broken;
    const entering = cheapestToMend(simplex, row, Math.sign(overBy));
    if (entering === undefined) return false;
    const moved = overBy / (table[row]?.[entering] ?? 1);
    for (const [other, line] of table.entries()) values[other] = (values[other] ?? 0) - moved * (line[entering] ?? 0);
    values[row] = (isUp[entering] ? (bounds[entering] ?? 0) : 0) + moved;
    enterBasis(simplex, { row, entering, leavesUp: overBy > 0 });
  }
  return false;
}

/** Returns the row whose value is furthest below zero (negative) or over the bound of its column; undefined if none is. */
function mostBroken({ values, basis, bounds }: Simplex): { row: number; overBy: number } | undefined {
  let broken: { row: number; overBy: number } | undefined;
  for (const [row, value] of values.entries()) {
    const overBy = Math.min(0, value) + Math.max(0, value - (bounds[basis[row] ?? 0] ?? NO_BOUND));
    if (Math.abs(overBy) > Math.max(CLOSE, Math.abs(broken?.overBy ?? 0))) broken = { row, overBy };
  }
  return broken;
}

/** Returns the column that moves a row the right way and adds the lowest mass for it; of equal ones that of the lowest cost. */
function cheapestToMend(
  { table, gainOfMass, gainOfCost, isUp, isBasic, bounds }: Simplex,
  row: number,
  direction: number,
): number | undefined {
  let best: { column: number; mass: number; cost: number } | undefined;
  for (const [column, coefficient] of (table[row] ?? []).entries()) {
    const rate = direction * coefficient * (isUp[column] ? -1 : 1);
    if (isBasic.has(column) || bounds[column] === 0 || rate <= CLOSE) continue;
    const turn = isUp[column] ? -1 : 1;
    const [mass, cost] = [(turn * (gainOfMass[column] ?? 0)) / rate, (turn * (gainOfCost[column] ?? 0)) / rate];
    const isLess = !best || mass < best.mass - CLOSE || (mass <= best.mass + CLOSE && cost < best.cost);
    if (isLess) best = { column, mass, cost };
  }
  return best?.column;
}
