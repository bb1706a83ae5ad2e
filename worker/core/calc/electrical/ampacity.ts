import type { Circuit } from '../../record/visit.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { Ampacity } from './electrical-result.ts';
import { TABLE_CONDITIONS, tableBundleWires, wireSize } from './wire-table.ts';

/** Altitude up to which the factor is known: AC 43.13-1B 11-67, example 2, reads 0.91 off the chart at 20,000 ft. */
const READ_ALTITUDE_FT = 20_000;
const READ_ALTITUDE_FACTOR = 0.91;

/**
 * Factor by which thin air lowers what a wire can carry: 1 at sea level, 0.91 at 20,000 ft (read), a straight line between.
 *
 * @returns undefined above 20,000 ft, where nobody has read the chart
 * @source AC 43.13-1B 11-67 example 2, read for 20,000 ft; the straight line from sea level is our own
 */
export function altitudeFactor(altitudeFt: number): number | undefined {
  if (!isAtMost(altitudeFt, READ_ALTITUDE_FT)) return undefined;
  return 1 - (1 - READ_ALTITUDE_FACTOR) * (Math.max(altitudeFt, 0) / READ_ALTITUDE_FT);
}

/**
 * Imax = I(free air) × altitude factor × bundle factor.
 *
 * @returns undefined where the altitude factor is not known
 * @source AC 43.13-1B 11-67 example 2, read
 */
export function deratedA(rating: NonNullable<Circuit['rating']>, altitudeFt: number): number | undefined {
  const factor = rating.altitudeFactor ?? altitudeFactor(altitudeFt);
  return factor === undefined ? undefined : rating.freeAirA * factor * rating.bundleFactor;
}

/**
 * Whether the surroundings of a wire are as hot as its conductor may become: nothing is then left for any current.
 *
 * @source AC 43.13-1B 11-66d(6), from memory: current heats a conductor from its surroundings up to its rating
 */
export function isTooHot({ ambientC, temperatureRating }: Circuit): boolean {
  return isAtLeast(ambientC, Number(temperatureRating));
}

/**
 * What the wire of a circuit can carry without end, nothing where it is too hot; else from the charts as the record read them, else from table 11-9, provided
 * that the circuit is within the conditions of the table.
 *
 * @returns undefined where neither is known: the wire must then not pass
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

/** A single wire heats nothing beside it, so the share of the bundle that is used does not count. */
function isBundleWithin(circuit: Circuit): boolean {
  const { bundleWires, bundleLoadPercent } = circuit;
  if (bundleWires === 1) return true;
  return isAtMost(bundleLoadPercent, TABLE_CONDITIONS.bundleLoadPercent) && bundleWires <= tableBundleWires(circuit);
}
