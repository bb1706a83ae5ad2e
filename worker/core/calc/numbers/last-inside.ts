/**
 * Returns the last value for which something holds, between one for which it does and one for which it does not: halved
 * until both are close, or neighbours as numbers.
 *
 * @param close resolution of the result, in the unit of the values
 * @source bisection, common practice
 * @example lastInside((x) => x * x <= 2, 1, 2, 1e-9)  // 1.41421356…
 */
export function lastInside(
  isInside: (value: number) => boolean,
  insideValue: number,
  outsideValue: number,
  close: number,
): number {
  let [inside, outside] = [insideValue, outsideValue];
  while (Math.abs(outside - inside) > close) {
    const middle = (inside + outside) / 2;
    // Two large numbers may have none between them.
    if (middle === inside || middle === outside) break;
    if (isInside(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}
