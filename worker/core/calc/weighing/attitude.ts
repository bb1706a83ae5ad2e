import { radians } from '../../units/angle.ts';

/** Height of the centre of gravity above the weighing points, and how far the aircraft is from its level attitude. */
export interface Attitude {
  /** All points at one height; negative if the aircraft hangs above its centre of gravity. */
  heightMm: number;
  standardHeightMm?: number;
  /** Nose up for the arm, right side down for the lateral distance. */
  errorDeg: number;
  standardErrorDeg?: number;
}

/**
 * Returns the correction of a centre of gravity for an attitude that is not level: Δx = −h · tan θ, to be added to the
 * apparent one. Sideways the same.
 *
 * u²(Δx) = (tan θ·u(h))² + (h·u(θ) / cos² θ)²
 *
 * @returns mm; the standard uncertainty is that of the correction, also for an attitude read as level
 * @source derived from statics of a rigid body; checked against reactions in a turned frame, and Monte Carlo
 * @example attitudeShift({ heightMm: 900, errorDeg: 0, standardErrorDeg: 0.1 })  // standard 1.57 mm
 */
export function attitudeShift(attitude: Attitude): { shiftMm: number; standardMm: number } {
  const { heightMm, standardHeightMm = 0, errorDeg, standardErrorDeg = 0 } = attitude;
  const slope = Math.tan(radians(errorDeg));
  return {
    shiftMm: -heightMm * slope,
    standardMm: Math.hypot(slope * standardHeightMm, heightMm * (1 + slope ** 2) * radians(standardErrorDeg)),
  };
}
