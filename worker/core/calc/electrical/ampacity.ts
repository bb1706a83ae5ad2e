import type { Circuit } from '../../record/visit.ts';
import { interpolate } from '../numbers/interpolate.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { Ampacity } from './electrical-result.ts';
import { TABLE_CONDITIONS, type TemperatureRatingC, tableBundleWires, type WireSize, wireSize } from './wire-table.ts';

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
 * @source AC 43.13-1B table 11-9, read: a wire is rated by the temperature of its conductor
 */
export function isTooHot({ ambientC, temperatureRating }: Circuit): boolean {
  return isAtLeast(ambientC, Number(temperatureRating));
}

/** Rise of a conductor of each rating over the surroundings of table 11-9, in °C. */
const RISES_C = (['105', '150', '200'] as const).map((rating) => ({
  rating,
  riseC: Number(rating) - TABLE_CONDITIONS.ambientC,
}));

/**
 * Returns the continuous current of a wire in surroundings hotter than those of table 11-9: I = I70 · √((TR − T) / (TR −
 * 70)), because the heat of a current rises with its square; never more than the columns of the table give for that rise.
 *
 * @param ambientC from 70 °C to the rating
 * @source our own, from AC 43.13-1B table 11-9, read: its three columns follow this within 4 % from No. 8 on, and within
 * a rounded ampere below
 */
export function hotAmpacityA({ ampacityA }: WireSize, ratedC: TemperatureRatingC, ambientC: number): number {
  const riseC = Math.max(0, Number(ratedC) - ambientC);
  const own = ampacityA[ratedC] * Math.sqrt(riseC / (Number(ratedC) - TABLE_CONDITIONS.ambientC));
  const columns = [{ root: 0, currentA: 0 }, ...RISES_C.map((each) => columnOf(ampacityA, each))];
  const ofColumns = interpolate(
    columns,
    Math.sqrt(riseC),
    ({ root }) => root,
    ({ currentA }) => currentA,
  );
  return Math.min(own, ofColumns);
}

function columnOf(ampacityA: WireSize['ampacityA'], { rating, riseC }: (typeof RISES_C)[number]) {
  return { root: Math.sqrt(riseC), currentA: ampacityA[rating] };
}

/**
 * Returns the continuous current that the wire of a circuit can carry: zero if too hot; else from the charts as the
 * record read them, else from table 11-9, provided that bundle and altitude are within its conditions; in hotter
 * surroundings reduced.
 *
 * @returns undefined if neither is known: the wire must then not pass
 * @source AC 43.13-1B table 11-9 with its note 1, read; above 70 °C as hotAmpacityA()
 */
export function ampacityOf(circuit: Circuit, altitudeFt: number): Ampacity | undefined {
  if (isTooHot(circuit)) return { currentA: 0, from: circuit.rating ? 'record' : 'table' };
  if (circuit.rating) {
    const currentA = deratedA(circuit.rating, altitudeFt);
    return currentA === undefined ? undefined : { currentA, from: 'record' };
  }
  const row = wireSize(circuit);
  if (!row || !isAtMost(altitudeFt, TABLE_CONDITIONS.altitudeFt) || !isBundleWithin(circuit)) return undefined;
  const { ambientC, temperatureRating } = circuit;
  return isAtMost(ambientC, TABLE_CONDITIONS.ambientC)
    ? { currentA: row.ampacityA[temperatureRating], from: 'table' }
    : { currentA: hotAmpacityA(row, temperatureRating, ambientC), from: 'table-reduced' };
}

/** A single wire heats no neighbour, so the used share of the bundle does not count. */
function isBundleWithin(circuit: Circuit): boolean {
  const { bundleWires, bundleLoadPercent } = circuit;
  if (bundleWires === 1) return true;
  return isAtMost(bundleLoadPercent, TABLE_CONDITIONS.bundleLoadPercent) && bundleWires <= tableBundleWires(circuit);
}
