/**
 * Normalises an angle to the full circle.
 *
 * @returns degrees, 0 ≤ angle < 360
 * @example wrap360(-10)  // 350
 */
export function wrap360(deg: number): number {
  return ((deg % 360) + 360) % 360;
}

/**
 * Returns the shorter turn from one direction to another; clockwise is positive.
 *
 * @returns degrees, −180 < turn ≤ 180
 * @example signedDifferenceDeg(358, 2)  // 4
 */
export function signedDifferenceDeg(fromDeg: number, toDeg: number): number {
  const turn = wrap360(toDeg - fromDeg);
  return turn > 180 ? turn - 360 : turn;
}

/** Converts degrees to radians. */
export function radians(deg: number): number {
  return (deg * Math.PI) / 180;
}
