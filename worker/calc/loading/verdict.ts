import type { LoadedAircraft, LoadStation } from '../../visit/visit.ts';
import { phrase } from '../../words/words.ts';
import { tanksOf, usableFuel } from '../fuel.ts';
import { isAtLeast, isAtMost } from '../limit-met.ts';
import type { Loading } from './boundary.ts';
import { burnPathOf } from './burn-path.ts';
import type { Envelope } from './envelope.ts';
import type { LeastPilot } from './least-pilot.ts';
import { loadStationsOf } from './load-space.ts';
import { type Margin, worstMargins } from './margin.ts';

/** Why a loading may not be flown. */
export type Verdict =
  | { state: 'inside'; worst: Margin | undefined }
  | { state: 'outside'; worst: Margin }
  /** Nobody sits where the aircraft is flown from: there is nothing to judge yet. */
  | { state: 'no-pilot' }
  /** The pilot in a seat is lighter than the aircraft states for it, or alone and lighter than the least solo pilot. */
  | { state: 'too-light'; station: string; leastKg: number; underKg: number }
  /** Alone, where nobody may be. */
  | { state: 'no-solo'; station: string }
  | { state: 'too-heavy'; overKg: number }
  /** `limit` is the identifier of a station or of a loading limit, or a phrase. */
  | { state: 'limit-exceeded'; limit: string; overKg: number };

/** What a loading is held to besides the masses of the aircraft. */
export interface JudgedBy {
  envelope?: Envelope | undefined;
  leastPilot?: LeastPilot | undefined;
}

/** The maximum landing mass, as the page and the pack name it. */
export const LANDING_MASS = phrase`maximum landing mass`;

/**
 * Judges loadings of an aircraft, from take-off until the fuel is gone. An aircraft that is too heavy to land even then may not
 * take off.
 *
 * @source common practice, no source
 */
export function judgeOf(
  aircraft: LoadedAircraft,
  { envelope, leastPilot }: JudgedBy = {},
): (loading: Loading) => Verdict {
  const seats = loadStationsOf(aircraft);
  const limits = massLimits(aircraft);
  const tanks = tanksOf(aircraft);
  const burn = burnPathOf(aircraft);
  return (loading) => {
    const overKg = loading.massKg - aircraft.maximumMassKg;
    if (!isAtMost(loading.massKg, aircraft.maximumMassKg)) return { state: 'too-heavy', overKg };
    const withoutFuelKg = loading.massKg - tanks.reduce((sum, { id }) => sum + (loading.load[id] ?? 0), 0);
    for (const { limit, maximumKg } of massesWithoutFuel(aircraft))
      if (!isAtMost(withoutFuelKg, maximumKg))
        return { state: 'limit-exceeded', limit, overKg: withoutFuelKg - maximumKg };
    for (const { id, stations, maximumKg } of limits) {
      const aboardKg = stations.reduce((sum, station) => sum + (loading.load[station] ?? 0), 0);
      if (!isAtMost(aboardKg, maximumKg)) return { state: 'limit-exceeded', limit: id, overKg: aboardKg - maximumKg };
    }
    const crew = crewVerdict(seats, loading.load, leastPilot);
    if (crew) return crew;
    if (!envelope) return { state: 'inside', worst: undefined };
    const worst = worstMargins(burn(loading), envelope).sort((a, b) => a.margin - b.margin)[0];
    return worst && !isAtLeast(worst.margin, 0) ? { state: 'outside', worst } : { state: 'inside', worst };
  };
}

function massesWithoutFuel({
  maximumZeroFuelMassKg,
  maximumLandingMassKg,
}: LoadedAircraft): { limit: string; maximumKg: number }[] {
  return [
    { limit: phrase`maximum zero-fuel mass`, maximumKg: maximumZeroFuelMassKg ?? Number.POSITIVE_INFINITY },
    { limit: LANDING_MASS, maximumKg: maximumLandingMassKg ?? Number.POSITIVE_INFINITY },
  ];
}

/**
 * Whether somebody flies the aircraft, and nobody who does is too light; undefined where that is so. Least masses of passengers are
 * no limits on the aircraft.
 */
function crewVerdict(
  seats: readonly LoadStation[],
  load: Loading['load'],
  least: LeastPilot | undefined,
): Verdict | undefined {
  const people = seats.filter(({ id, kind }) => kind !== 'baggage' && (load[id] ?? 0) > 0);
  const pilots = people.filter(({ kind }) => kind === 'pilot');
  const [first] = pilots;
  if (!first) return { state: 'no-pilot' };
  const isAlone = people.length === 1;
  if (isAlone && least && least.kg === undefined) return { state: 'no-solo', station: first.id };
  for (const { id, minimumMassKg = 0 } of pilots) {
    const leastKg = Math.max(minimumMassKg, (isAlone ? least?.kg : undefined) ?? 0);
    const aboardKg = load[id] ?? 0;
    if (!isAtLeast(aboardKg, leastKg)) return { state: 'too-light', station: id, leastKg, underKg: leastKg - aboardKg };
  }
  return undefined;
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
