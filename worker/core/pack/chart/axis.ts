/** Returns a round step of an axis: 1, 2 or 5 times a power of ten. */
function stepFor(span: number, most: number): number {
  const rough = span / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const factor = [1, 2, 5, 10].find((candidate) => candidate * power >= rough) ?? 10;
  return factor * power;
}

export interface Axis {
  from: number;
  to: number;
  ticks: number[];
  /** Decimals that distinguish the ticks. */
  decimals: number;
}

/**
 * Returns an axis with round ends around all values.
 *
 * @param most max. number of steps
 * @example axisFor([1640, 1800], 5)  // from 1600 to 1800 by 50
 */
export function axisFor(values: readonly number[], most: number): Axis {
  const least = Math.min(...values);
  const greatest = Math.max(...values);
  const step = stepFor(Math.max(greatest - least, Math.abs(greatest) * 1e-6, 1e-6), most);
  const first = Math.floor(least / step);
  const last = Math.max(Math.ceil(greatest / step), first + 1);
  const decimals = Math.max(0, -Math.floor(Math.log10(step)));
  return {
    from: first * step,
    to: last * step,
    ticks: Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step),
    decimals,
  };
}
