import type { Aircraft } from '../../record/visit.ts';

/**
 * Returns the centre of gravity in per cent of the mean aerodynamic chord: (x − LEMAC) / MAC · 100.
 *
 * @returns per cent; undefined without a chord
 * @source FAA-H-8083-1B ch. 3
 * @example percentMac({ leadingEdgeArmMm: 144, lengthMm: 62 }, 161)  // 27.42
 */
export function percentMac(mac: Aircraft['mac'], armMm: number): number | undefined {
  return mac && ((armMm - mac.leadingEdgeArmMm) / mac.lengthMm) * 100;
}

/**
 * Returns the arm of a place that is given in per cent of the mean aerodynamic chord: x = LEMAC + p / 100 · MAC.
 *
 * @returns mm, the inverse of `percentMac`
 * @source derived from FAA-H-8083-1B ch. 3, as percentMac()
 * @example armAtPercentMm({ leadingEdgeArmMm: 144, lengthMm: 62 }, 25)  // 159.5
 */
export function armAtPercentMm(mac: NonNullable<Aircraft['mac']>, percent: number): number {
  return mac.leadingEdgeArmMm + (percent / 100) * mac.lengthMm;
}
