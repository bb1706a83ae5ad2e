import type { LoadedAircraft, LoadStation } from '../../record/visit.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { Loading } from './boundary.ts';
import { burnPathOf } from './burn-path.ts';
import type { Envelope } from './envelope.ts';
import { tanksOf, usableFuel } from './fuel.ts';
import type { LeastPilot } from './least-pilot.ts';
import { loadStationsOf } from './load-space.ts';
import type { ExceededLimit, Margin, RefusedLoading } from './loading-result.ts';
import { worstMargins } from './margin.ts';

export type { ExceededLimit } from './loading-result.ts';

// An aircraft without a pilot, or with one below the minimum, has its own verdict and never a green one; extremes,
// tables, named loadings and the owner’s page share it. The page stays neutral until pilot, fuel and burn are
// entered.

/** Verdict on a loading: it may be flown, or the reason against it. */
export type Verdict = { state: 'inside'; worst: Margin | undefined } | RefusedLoading;

/** Limits of a loading in addition to the masses of the aircraft. */
export interface JudgedBy {
  envelope?: Envelope | undefined;
  leastPilot?: LeastPilot | undefined;
}

/**
 * Judges loadings of an aircraft, from take-off until no usable fuel is left. An aircraft that is too heavy to land
 * even then may not take off.
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
    for (const { exceeded, maximumKg } of massesWithoutFuel(aircraft))
      if (!isAtMost(withoutFuelKg, maximumKg))
        return { state: 'limit-exceeded', exceeded, overKg: withoutFuelKg - maximumKg };
    for (const { exceeded, stations, maximumKg } of limits) {
      const aboardKg = stations.reduce((sum, station) => sum + (loading.load[station] ?? 0), 0);
      if (!isAtMost(aboardKg, maximumKg)) return { state: 'limit-exceeded', exceeded, overKg: aboardKg - maximumKg };
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
}: LoadedAircraft): { exceeded: ExceededLimit; maximumKg: number }[] {
  return [
    { exceeded: { kind: 'zero-fuel-mass' }, maximumKg: maximumZeroFuelMassKg ?? Number.POSITIVE_INFINITY },
    { exceeded: { kind: 'landing-mass' }, maximumKg: maximumLandingMassKg ?? Number.POSITIVE_INFINITY },
  ];
}

/**
 * Returns the refusal if nobody flies the aircraft, or if the pilot is too light; else undefined. Min. masses of
 * passengers are not limits of the aircraft.
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
  exceeded: ExceededLimit;
  stations: readonly string[];
  maximumKg: number;
}

const atStation = (id: string, maximumKg: number): MassLimit => ({
  exceeded: { kind: 'station', id },
  stations: [id],
  maximumKg,
});

function massLimits(aircraft: LoadedAircraft): MassLimit[] {
  const seats = loadStationsOf(aircraft);
  return [
    ...seats.map(({ id, maximumMassKg }) => atStation(id, maximumMassKg)),
    ...(aircraft.loadingLimits ?? []).map(({ id, stations, maximumMassKg }) => ({
      exceeded: { kind: 'loading-limit', id } as const,
      stations,
      maximumKg: maximumMassKg,
    })),
    ...tanksOf(aircraft).map((tank) => atStation(tank.id, Math.max(0, usableFuel(tank, tank.capacityL).massKg))),
  ];
}
