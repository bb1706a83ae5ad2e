import type { Electrical } from '../../record/visit.ts';
import type { Material } from '../../record/wire-size.ts';
import { REGULATED_V } from './load.ts';

/**
 * Allowable drop from bus to equipment. Of continuous loads it was read in AC 43.13-1B tables 11-7 and 11-8, and in the
 * worked example in 11-66; of intermittent loads, in table 11-6, it is from memory.
 */
export const DROP_LIMIT_V: Readonly<Record<Electrical['system'], { continuous: number; intermittent: number }>> = {
  '14-volt': { continuous: 0.5, intermittent: 1 },
  '28-volt': { continuous: 1, intermittent: 2 },
};

/** Share of the regulated voltage that may be lost between a source or the battery and the bus: FAA-H-8083-31, chapter 9 (read). */
const FEEDER_SHARE = 0.02;

/**
 * Returns the allowable drop of a main power wire with the rated current of the source, or the five-minute rate of the
 * battery.
 *
 * @returns volts
 * @source FAA-H-8083-31 chapter 9, read
 * @example feederLimitV('28-volt')  // 0.56
 */
export function feederLimitV(system: Electrical['system']): number {
  return FEEDER_SHARE * REGULATED_V[system];
}

/** Max. satisfactory resistance of a ground return: 0.005 Ω, FAA-H-8083-31, chapter 9 (read). */
export const GROUND_RETURN_LIMIT_MILLIOHM = 5;

/** Temperature at which the table gives the resistance, and inferred temperatures of zero resistance, in °C (read). */
const REFERENCE_C = 20;
const ZERO_C: Readonly<Record<Material, number>> = { copper: 234.5, aluminium: 238.1 };

/**
 * Returns the ratio of the resistance at a temperature to that at 20 °C: (234.5 + T2) / 254.5 for copper, (238.1 + T2)
 * / 258.1 for aluminium. A colder wire gets no credit.
 *
 * @returns 1 or more
 * @source AC 43.13-1B 11-66d(4), read
 */
export function resistanceRatio(conductorC: number, material: Material = 'copper'): number {
  return (ZERO_C[material] + Math.max(conductorC, REFERENCE_C)) / (ZERO_C[material] + REFERENCE_C);
}

/** A wire that carries a current. */
interface LoadedWire {
  /** Resistance at 20 °C. */
  ohmPerM: number;
  runM: number;
  currentA: number;
  /** Temperature of the conductor. @default 20 */
  conductorC?: number;
  /** @default 'copper' */
  material?: Material | undefined;
}

/**
 * Returns the voltage drop: V = R20 · L · I · (234.5 + T2) / 254.5, for aluminium with its own two figures.
 *
 * @returns volts
 * @source AC 43.13-1B 11-66 and table 11-7, read
 * @example dropV({ ohmPerM: 0.01, runM: 5, currentA: 10 })  // 0.5
 */
export function dropV({ ohmPerM, runM, currentA, conductorC = REFERENCE_C, material }: LoadedWire): number {
  return ohmPerM * runM * currentA * resistanceRatio(conductorC, material);
}

/**
 * Returns the longest run of a hot wire, in the unit of the run allowed at 20 °C: L2 = 254.5 · L1 / (234.5 + T2), for
 * aluminium L2 = 258.1 · L1 / (238.1 + T2).
 *
 * @source AC 43.13-1B 11-66d(4), read
 * @example longestRunAtTemperature(15.5, 182)  // 9.5
 */
export function longestRunAtTemperature(coldRun: number, conductorC: number, material: Material = 'copper'): number {
  return coldRun / resistanceRatio(conductorC, material);
}

/**
 * Returns the temperature of a loaded conductor: T2 = T1 + (TR − T1) · √(I2 / Imax). The form gives the figures of the
 * worked example.
 *
 * @source AC 43.13-1B 11-66d(6): symbols read, form of the equation from memory
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
