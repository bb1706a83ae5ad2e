/** Speed of light in vacuum, m/s (exact, SI). */
const LIGHT_M_PER_S = 299_792_458;

/**
 * Returns the wavelength in mm: λ = c / f. Infinite at 0 MHz.
 *
 * @source definition of the wavelength; speed of light exact by the SI
 * @example wavelengthMm(127)  // 2360.57
 */
export function wavelengthMm(frequencyMhz: number): number {
  return LIGHT_M_PER_S / (frequencyMhz * 1000);
}

/**
 * Returns a quarter of the wavelength in mm, the min. radius of a ground plane.
 *
 * @source definition; a ground plane of a quarter wave on every side: AC 43.13-2B chapter 3 as quoted by a beacon
 *   manufacturer, read
 */
export function quarterWaveMm(frequencyMhz: number): number {
  return wavelengthMm(frequencyMhz) / 4;
}
