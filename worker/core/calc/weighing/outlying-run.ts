import type { ReducedPoint } from './weighing-result.ts';

/** The reading that lies furthest from the others of its point. */
export interface OutlyingRun {
  point: string;
  name: string;
  /** Index of the run; undefined with two runs, which do not tell which one is wrong. */
  run: number | undefined;
  netKg: number;
  /** Signed distance from the median of the point; with two runs, the second less the first. */
  offKg: number;
}

/**
 * Returns the reading of all points that lies furthest from the median of its point.
 *
 * @returns undefined if no point was read twice
 * @source common practice, no source
 */
export function outlyingRun(points: readonly ReducedPoint[]): OutlyingRun | undefined {
  return points
    .filter(({ runs }) => runs.length > 1)
    .map(outlierOf)
    .sort((a, b) => Math.abs(b.offKg) - Math.abs(a.offKg))[0];
}

function outlierOf({ id, name, runs }: ReducedPoint): OutlyingRun {
  const nets = runs.map(({ netKg }) => netKg);
  const [first = 0, second = 0] = nets;
  if (nets.length === 2) return { point: id, name, run: undefined, netKg: second, offKg: second - first };
  const middle = medianOf(nets);
  const off = nets.map((netKg) => netKg - middle);
  const run = off.reduce((best, value, index) => (Math.abs(value) > Math.abs(off[best] ?? 0) ? index : best), 0);
  return { point: id, name, run, netKg: nets[run] ?? 0, offKg: off[run] ?? 0 };
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(at)] ?? 0) + (sorted[Math.ceil(at)] ?? 0)) / 2;
}
