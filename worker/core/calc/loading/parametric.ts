import { enterBasis, feasibleAtLowestMass, NO_BOUND, type Simplex, solutionOf } from './simplex.ts';

/** Σ coefficientᵢ · xᵢ ≤ bound. */
export interface Row {
  coefficients: readonly number[];
  bound: number;
}

/** A linear programme over masses 0 ≤ xᵢ ≤ upperᵢ. */
export interface MassProgramme {
  upper: readonly number[];
  /** Value of each kg, to be kept as small as possible at each total mass. */
  costs: readonly number[];
  rows: readonly Row[];
}

const CLOSE = 1e-12;

/**
 * Returns the masses with the min. total cost at each total mass: corners of a line along which the total mass rises from
 * its minimum to its maximum, and between which every mass changes linearly.
 *
 * The simplex method with bounded variables maximises λ·Σx − Σcost·x. The lowest mass is best for λ → −∞; as λ rises, each
 * pivot is the next corner of the convex line.
 *
 * @returns an empty list if no masses meet all rows
 * @source parametric linear programming (S. Gass, T. Saaty, 1955), from memory; checked against every corner by
 *   tests/core/calc/loading/crossing-limits.test.ts
 */
export function cheapestLine({ upper, costs, rows }: MassProgramme): number[][] {
  const size = upper.length;
  const width = size + rows.length;
  const table = rows.map(({ coefficients }, row) =>
    Array.from({ length: width }, (_, column) =>
      column < size ? (coefficients[column] ?? 0) : column - size === row ? 1 : 0,
    ),
  );
  const basis = rows.map((_, row) => size + row);
  const simplex: Simplex = {
    size,
    table,
    basis,
    values: rows.map(({ bound }) => bound),
    bounds: Array.from({ length: width }, (_, column) => upper[column] ?? NO_BOUND),
    isUp: new Array<boolean>(width).fill(false),
    isBasic: new Set(basis),
    gainOfMass: Array.from({ length: width }, (_, column) => (column < size ? 1 : 0)),
    gainOfCost: Array.from({ length: width }, (_, column) => costs[column] ?? 0),
  };
  if (!feasibleAtLowestMass(simplex)) return [];
  const corners = [solutionOf(simplex)];
  for (let step = 0; step < 40 * (width + 1); step++) {
    const entering = nextColumn(simplex);
    if (entering === undefined) break;
    const room = enter(simplex, entering);
    if (room === NO_BOUND) break;
    if (room > 0) corners.push(solutionOf(simplex));
  }
  return corners;
}

/** Returns the column that gains first as the value of mass rises; undefined if none does. */
function nextColumn({ gainOfMass, gainOfCost, isUp, isBasic, bounds }: Simplex): number | undefined {
  let [best, first] = [undefined as number | undefined, NO_BOUND];
  for (let column = 0; column < gainOfMass.length; column++) {
    const mass = gainOfMass[column] ?? 0;
    if (isBasic.has(column) || bounds[column] === 0 || (isUp[column] ? mass >= -CLOSE : mass <= CLOSE)) continue;
    const at = (gainOfCost[column] ?? 0) / mass;
    if (at < first) [best, first] = [column, at];
  }
  return best;
}

/** Moves a column from its bound as far as the rows allow; returns how far. */
function enter(simplex: Simplex, entering: number): number {
  const { table, basis, values, bounds, isUp } = simplex;
  const direction = isUp[entering] ? -1 : 1;
  let [room, leaving, leavesUp] = [bounds[entering] ?? NO_BOUND, -1, false];
  for (const [row, line] of table.entries()) {
    const rate = direction * (line[entering] ?? 0);
    if (Math.abs(rate) <= CLOSE) continue;
    const top = bounds[basis[row] ?? 0] ?? NO_BOUND;
    const most = Math.max(0, rate > 0 ? (values[row] ?? 0) / rate : (top - (values[row] ?? 0)) / -rate);
    if (most < room) [room, leaving, leavesUp] = [most, row, rate < 0];
  }
  if (room === NO_BOUND) return room;
  for (const [row, line] of table.entries())
    values[row] = (values[row] ?? 0) - direction * room * (line[entering] ?? 0);
  if (leaving < 0) {
    isUp[entering] = !isUp[entering];
    return room;
  }
  values[leaving] = direction > 0 ? room : (bounds[entering] ?? 0) - room;
  enterBasis(simplex, { row: leaving, entering, leavesUp });
  return room;
}
