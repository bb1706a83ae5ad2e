/**
 * An angle brought to the full circle, 0 up to but not including 360.
 *
 * @example wrap360(-10)  // 350
 */
export function wrap360(deg: number): number {
  return ((deg % 360) + 360) % 360;
}

/**
 * The way from one direction to another by the shorter turn, above −180 up to 180; clockwise is positive.
 *
 * @example signedDifferenceDeg(358, 2)  // 4
 */
export function signedDifferenceDeg(fromDeg: number, toDeg: number): number {
  const turn = wrap360(toDeg - fromDeg);
  return turn > 180 ? turn - 360 : turn;
}

/** Radians of an angle in degrees. */
export function radians(deg: number): number {
  return (deg * Math.PI) / 180;
}
