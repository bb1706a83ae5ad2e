/** Newtons per pound-force, square feet per square centimetre, and miles per kilometre: all exact. */
const NEWTONS_PER_LBF = 4.4482216152605;
const CM2_PER_FT2 = 929.0304;
const KM_PER_MILE = 1.609344;

/**
 * Returns the wind load on an antenna in pounds: D = 0.000327 · A · V², A in square feet, V in miles per hour. The
 * factor includes the reduction by 90 % for a streamlined shape, which must not be applied twice: the flat plate has
 * 0.00327, a drag coefficient of 1.28.
 *
 * @returns pounds-force
 * @source AC 43.13-2B chapter 3, from memory
 * @example dragLb(0.135, 250)  // 2.759
 */
export function dragLb(areaFt2: number, speedMph: number): number {
  return 0.000327 * areaFt2 * speedMph ** 2;
}

/**
 * Returns the wind load on an antenna in newtons, from cm² and km/h.
 *
 * @source AC 43.13-2B chapter 3, from memory; factors of units exact
 */
export function dragN(areaCm2: number, speedKmh: number): number {
  return dragLb(areaCm2 / CM2_PER_FT2, speedKmh / KM_PER_MILE) * NEWTONS_PER_LBF;
}
