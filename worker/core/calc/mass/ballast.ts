/** An aircraft whose centre of gravity has to be elsewhere, and the place where mass can be added or removed. */
export interface WantedBalance {
  massKg: number;
  /** Arm of its centre of gravity before. */
  armMm: number;
  /** Arm of its centre of gravity afterwards. */
  wantedArmMm: number;
  /** Arm of the place. */
  placeArmMm: number;
}

/**
 * Returns the ballast that brings the centre of gravity to a wanted arm: m = M · (x₂ − x₁) / (x − x₂).
 *
 * The divisor is the distance from the place to the new centre of gravity. With the old one the result is too small.
 *
 * @returns kg; undefined if no mass at the place has that effect
 * @source derived from the sum of the moments, as in a motor-glider manual, read; checked against a new balance
 * @example ballastToAddKg({ massKg: 4954, armMm: 30.5, wantedArmMm: 32, placeArmMm: 162 })  // 57.16, any units
 */
export function ballastToAddKg({ massKg, armMm, wantedArmMm, placeArmMm }: WantedBalance): number | undefined {
  if (wantedArmMm === armMm) return 0;
  const ballastKg = (massKg * (wantedArmMm - armMm)) / (placeArmMm - wantedArmMm);
  return Number.isFinite(ballastKg) && ballastKg > 0 ? ballastKg : undefined;
}

/**
 * Returns the mass whose removal brings the centre of gravity to a wanted arm: m = M · (x₂ − x₁) / (x₂ − x).
 *
 * @returns kg; undefined if no removal at the place has that effect, or if nothing would be left
 * @source derived from the sum of the moments; checked against a new balance and an examination item, read
 * @example massToRemoveKg({ massKg: 112_000, armMm: 22.62, wantedArmMm: 20, placeArmMm: 30 })  // 29 344, any units
 */
export function massToRemoveKg({ massKg, armMm, wantedArmMm, placeArmMm }: WantedBalance): number | undefined {
  if (wantedArmMm === armMm) return 0;
  const removedKg = (massKg * (wantedArmMm - armMm)) / (wantedArmMm - placeArmMm);
  return removedKg > 0 && removedKg < massKg ? removedKg : undefined;
}
