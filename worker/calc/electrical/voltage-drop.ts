import type { Electrical } from '../../visit/visit.ts';

/**
 * Allowable drop from bus to equipment, AC 43.13-1B table 11-6: from memory, borne out by the row labels of table 11-7 and by
 * the worked example in 11-66, which were read.
 */
export const DROP_LIMIT_V: Readonly<Record<Electrical['system'], { continuous: number; intermittent: number }>> = {
  '14-volt': { continuous: 0.5, intermittent: 1 },
  '28-volt': { continuous: 1, intermittent: 2 },
};

/** Temperature at which the table gives the resistance, and inferred temperature of no resistance of copper, in °C. */
const REFERENCE_C = 20;
const COPPER_ZERO_C = 234.5;

/** Resistance of copper at a temperature against that at 20 °C: (234.5 + T2) / 254.5. A colder wire is given no credit. */
export function heatFactor(conductorC: number): number {
  return (COPPER_ZERO_C + Math.max(conductorC, REFERENCE_C)) / (COPPER_ZERO_C + REFERENCE_C);
}

/** V = R20 · L · I · (234.5 + T2) / 254.5 */
export function dropV(ohmPerM: number, runM: number, currentA: number, conductorC = REFERENCE_C): number {
  return ohmPerM * runM * currentA * heatFactor(conductorC);
}

/**
 * Longest run of a hot copper wire, in the unit of the run allowed at 20 °C: L2 = 254.5 · L1 / (234.5 + T2), AC 43.13-1B 11-66d(4).
 *
 * @example hotRun(15.5, 182)  // 9.5
 */
export function hotRun(coldRun: number, conductorC: number): number {
  return coldRun / heatFactor(conductorC);
}

/**
 * Temperature of a loaded conductor: T2 = T1 + (TR − T1) · √(I2 / Imax), AC 43.13-1B 11-66d(6). The symbols were read; the form
 * of the equation is from memory and gives the figures of the worked example.
 *
 * @example conductorTemperatureC({ ambientC: 50, ratedC: 200, currentA: 20, ampacityA: 26 })  // 181.6
 */
export function conductorTemperatureC(at: {
  ambientC: number;
  ratedC: number;
  currentA: number;
  ampacityA: number;
}): number {
  return at.ambientC + (at.ratedC - at.ambientC) * Math.sqrt(at.currentA / at.ampacityA);
}
