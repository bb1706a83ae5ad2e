import type { Circuit } from '../../record/visit.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { Ampacity } from './electrical-result.ts';
import { TABLE_CONDITIONS, tableBundleWires, wireSize } from './wire-table.ts';

/** Altitude up to which the factor is known: AC 43.13-1B 11-67, example 2, takes 0.91 from the chart at 20,000 ft. */
const READ_ALTITUDE_FT = 20_000;
const READ_ALTITUDE_FACTOR = 0.91;

/**
 * Returns the factor by which thin air reduces the current of a wire: 1 at sea level, 0.91 at 20,000 ft (read), linear
 * between.
 *
 * @returns 0.91 to 1; undefined above 20,000 ft, for which the chart was not read
 * @source AC 43.13-1B 11-67 example 2, read for 20,000 ft; the straight line from sea level is our own
 */
export function altitudeFactor(altitudeFt: number): number | undefined {
  if (!isAtMost(altitudeFt, READ_ALTITUDE_FT)) return undefined;
  return 1 - (1 - READ_ALTITUDE_FACTOR) * (Math.max(altitudeFt, 0) / READ_ALTITUDE_FT);
}

/**
 * Returns the derated current: Imax = I(free air) × altitude factor × bundle factor.
 *
 * @returns amperes; undefined if the altitude factor is not known
 * @source AC 43.13-1B 11-67 example 2, read
 */
export function deratedA(rating: NonNullable<Circuit['rating']>, altitudeFt: number): number | undefined {
  const factor = rating.altitudeFactor ?? altitudeFactor(altitudeFt);
  return factor === undefined ? undefined : rating.freeAirA * factor * rating.bundleFactor;
}

/**
 * Whether the ambient temperature of a wire reaches the rating of its conductor: no margin for current is left.
 *
 * @source AC 43.13-1B 11-66d(6), from memory: current heats a conductor from its surroundings up to its rating
 */
export function isTooHot({ ambientC, temperatureRating }: Circuit): boolean {
  return isAtLeast(ambientC, Number(temperatureRating));
}

/**
 * Returns the continuous current that the wire of a circuit can carry: zero if too hot; else from the charts as the
 * record read them, else from table 11-9, provided that the circuit is within the conditions of the table.
 *
 * @returns undefined if neither is known: the wire must then not pass
 * @source AC 43.13-1B table 11-9 with its note 1, read
 */
export function ampacityOf(circuit: Circuit, altitudeFt: number): Ampacity | undefined {
  if (isTooHot(circuit)) return { currentA: 0, from: circuit.rating ? 'record' : 'table' };
  if (circuit.rating) {
    const currentA = deratedA(circuit.rating, altitudeFt);
    return currentA === undefined ? undefined : { currentA, from: 'record' };
  }
  const row = wireSize(circuit);
  const isWithin =
    isAtMost(circuit.ambientC, TABLE_CONDITIONS.ambientC) &&
    isAtMost(altitudeFt, TABLE_CONDITIONS.altitudeFt) &&
    isBundleWithin(circuit);
  return row && isWithin ? { currentA: row.ampacityA[circuit.temperatureRating], from: 'table' } : undefined;
}

/** A single wire heats no neighbour, so the used share of the bundle does not count. */
function isBundleWithin(circuit: Circuit): boolean {
  const { bundleWires, bundleLoadPercent } = circuit;
  if (bundleWires === 1) return true;
  return isAtMost(bundleLoadPercent, TABLE_CONDITIONS.bundleLoadPercent) && bundleWires <= tableBundleWires(circuit);
}
