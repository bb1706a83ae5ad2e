/**
 * Piecewise linear interpolation in a table of rising x; held at its first and last value outside.
 *
 * @example interpolate([{ x: 0, y: 1 }, { x: 10, y: 2 }], 5)  // 1.5
 */
export function interpolate(table: readonly { x: number; y: number }[], x: number): number {
  const upper = table.findIndex((point) => point.x >= x);
  const right = table[upper === -1 ? table.length - 1 : upper];
  const left = table[upper === -1 ? table.length - 1 : Math.max(0, upper - 1)];
  if (!left || !right) return 0;
  if (x <= left.x || right.x === left.x) return left.y;
  return left.y + ((x - left.x) / (right.x - left.x)) * (right.y - left.y);
}
