/** Speed of light in vacuum, m/s (exact, SI). */
const LIGHT_M_PER_S = 299_792_458;

/**
 * Wavelength in mm: λ = c / f.
 *
 * @example wavelengthMm(127)  // 2360.57
 */
export function wavelengthMm(frequencyMhz: number): number {
  return LIGHT_M_PER_S / (frequencyMhz * 1000);
}

/** A quarter of the wavelength, the least radius of a ground plane. */
export function quarterWaveMm(frequencyMhz: number): number {
  return wavelengthMm(frequencyMhz) / 4;
}
