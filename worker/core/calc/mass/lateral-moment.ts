/**
 * Returns the lateral moment of the stated items: L = Σ m·y.
 *
 * A limit of the offset moment sums the items that it names, often the occupants without the empty aircraft. So the
 * caller chooses the items. A mass that is missing counts negative: off the left side it gives a positive moment.
 *
 * @param items masses in kg, lateral distances in mm, right positive
 * @returns kg·mm, right positive
 * @source derived from sums of moments; checked against a helicopter flight manual, read
 * @example lateralMomentKgMm([{ massKg: -3.1, lateralMm: -600 }])  // 1860
 */
export function lateralMomentKgMm(items: readonly { massKg: number; lateralMm: number }[]): number {
  return items.reduce((sum, { massKg, lateralMm }) => sum + massKg * lateralMm, 0);
}
