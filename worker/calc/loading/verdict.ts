import type { LoadedAircraft } from '../../visit/visit.ts';
import { phrase } from '../../words/words.ts';
import { tanksOf, usableFuel } from '../fuel.ts';
import type { Loading } from './boundary.ts';
import { burnPathOf } from './burn-path.ts';
import type { Envelope } from './envelope.ts';
import { loadStationsOf } from './load-space.ts';
import { type Margin, worstMargins } from './margin.ts';

/** Why a loading may not be flown. */
export type Verdict =
  | { state: 'inside'; worst: Margin | undefined }
  | { state: 'outside'; worst: Margin }
  | { state: 'too-heavy'; overKg: number }
  /** `limit` is the identifier of a station or of a loading limit, or a phrase. */
  | { state: 'limit-exceeded'; limit: string; overKg: number };

/** Rounding of sums must not turn a limit met exactly into a limit exceeded. */
const TOLERANCE = 1e-9;

/**
 * Judges loadings of an aircraft, from take-off until the fuel is gone.
 *
 * @source common practice, no source
 */
export function judgeOf(aircraft: LoadedAircraft, envelope?: Envelope): (loading: Loading) => Verdict {
  const limits = massLimits(aircraft);
  const tanks = tanksOf(aircraft);
  const burn = burnPathOf(aircraft);
  return (loading) => {
    const overKg = loading.massKg - aircraft.maximumMassKg;
    if (overKg > TOLERANCE) return { state: 'too-heavy', overKg };
    const withoutFuelKg = loading.massKg - tanks.reduce((sum, { id }) => sum + (loading.load[id] ?? 0), 0);
    const overZeroFuelKg = withoutFuelKg - (aircraft.maximumZeroFuelMassKg ?? Number.POSITIVE_INFINITY);
    if (overZeroFuelKg > TOLERANCE)
      return { state: 'limit-exceeded', limit: phrase`maximum zero-fuel mass`, overKg: overZeroFuelKg };
    for (const { id, stations, maximumKg } of limits) {
      const aboardKg = stations.reduce((sum, station) => sum + (loading.load[station] ?? 0), 0);
      if (aboardKg - maximumKg > TOLERANCE) return { state: 'limit-exceeded', limit: id, overKg: aboardKg - maximumKg };
    }
    if (!envelope) return { state: 'inside', worst: undefined };
    const worst = worstMargins(burn(loading), envelope).sort((a, b) => a.margin - b.margin)[0];
    return worst && worst.margin < -TOLERANCE ? { state: 'outside', worst } : { state: 'inside', worst };
  };
}

interface MassLimit {
  id: string;
  stations: readonly string[];
  maximumKg: number;
}

function massLimits(aircraft: LoadedAircraft): MassLimit[] {
  const seats = loadStationsOf(aircraft);
  return [
    ...seats.map(({ id, maximumMassKg }) => ({ id, stations: [id], maximumKg: maximumMassKg })),
    ...(aircraft.loadingLimits ?? []).map(({ id, stations, maximumMassKg }) => ({
      id,
      stations,
      maximumKg: maximumMassKg,
    })),
    ...tanksOf(aircraft).map((tank) => {
      return { id: tank.id, stations: [tank.id], maximumKg: Math.max(0, usableFuel(tank, tank.capacityL).massKg) };
    }),
  ];
}
