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
