import type { LoadedAircraft, LoadStation } from '../../record/visit.ts';
import { lateralJudge } from '../lateral/lateral-verdict.ts';
import { interpolate } from '../numbers/interpolate.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { Loading } from './boundary.ts';
import { burnPathOf } from './burn-path.ts';
import type { Envelope } from './envelope.ts';
import { tanksAndWaterOf, usableFuel, waterTanksOf } from './fuel.ts';
import { isSeat, loadStationsOf } from './load-space.ts';
import type { ExceededLimit, LeastPilot, Margin, RefusedLoading } from './loading-result.ts';
import { worstMargins } from './margin.ts';
import { type MassLimit, massLimitsOf } from './mass-limits.ts';
import { matchedRows } from './matched-rows.ts';

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
  /** Empty mass and lateral moment, if lateral limits count. */
  lateral?: { massKg: number; lateralKgMm: number } | undefined;
}

/**
 * Judges loadings of an aircraft, from take-off until no usable fuel is left. An aircraft that is too heavy to land
 * even then may not take off.
 *
 * @source common practice, no source
 */
export function judgeOf(
  aircraft: LoadedAircraft,
  { envelope, leastPilot, lateral }: JudgedBy = {},
): (loading: Loading) => Verdict {
  const seats = loadStationsOf(aircraft);
  const over = limitsOver(aircraft);
  const burn = burnPathOf(aircraft);
  const judgeLaterally = lateral && lateralJudge(aircraft, lateral);
  return (loading) => {
    const refused = over(loading) ?? crewVerdict(seats, loading.load, leastPilot);
    if (refused) return refused;
    const path = burn(loading);
    const lightestKg = path.at(-1)?.massKg ?? loading.massKg;
    const { minimumMassKg = 0 } = aircraft;
    if (!isAtLeast(lightestKg, minimumMassKg))
      return { state: 'too-light-in-flight', underKg: minimumMassKg - lightestKg };
    const worst = envelope && worstMargins(path, envelope).sort((a, b) => a.margin - b.margin)[0];
    // The envelope comes first: the front and rear edges of lateral limits are limits along the aircraft, too.
    if (worst && !isAtLeast(worst.margin, 0)) return { state: 'outside', worst };
    const sideways = judgeLaterally?.(path);
    if (sideways && !isAtLeast(sideways.marginMm, 0))
      return { state: 'outside-laterally', side: sideways.side, overMm: -sideways.marginMm };
    return { state: 'inside', worst };
  };
}

/**
 * Returns the check of a loading against the limits of mass alone: undefined if it is within all of them.
 *
 * @source common practice, no source
 */
export function limitsOver(aircraft: LoadedAircraft): (loading: Loading) => RefusedLoading | undefined {
  const { maximumMassKg, maximumMassWithExternalLoadKg = maximumMassKg } = aircraft;
  const external = loadStationsOf(aircraft).filter(({ kind }) => kind === 'external');
  const masses = massLimitsOf(aircraft);
  const limits = stationLimits(aircraft);
  return (loading) => {
    const carriesExternal = external.some(({ id }) => (loading.load[id] ?? 0) > 0);
    const mostKg = carriesExternal ? maximumMassWithExternalLoadKg : maximumMassKg;
    if (!isAtMost(loading.massKg, mostKg)) return { state: 'too-heavy', overKg: loading.massKg - mostKg };
    const over = overMass(masses, loading) ?? overStation(limits, loading.load) ?? overMatched(aircraft, loading.load);
    return over && { state: 'limit-exceeded', ...over };
  };
}

interface Over {
  exceeded: ExceededLimit;
  overKg: number;
}

const sumOf = (load: Loading['load'], stations: readonly string[]): number =>
  stations.reduce((sum, station) => sum + (load[station] ?? 0), 0);

/** Returns the limit of the mass without some of the load that is exceeded. */
function overMass(limits: readonly MassLimit[], { massKg, load }: Loading): Over | undefined {
  const emptyKg = massKg - sumOf(load, Object.keys(load));
  for (const { exceeded, stations, maximumKg } of limits) {
    const overKg = emptyKg + sumOf(load, stations) - maximumKg;
    if (!isAtMost(maximumKg + overKg, maximumKg)) return { exceeded, overKg };
  }
  return undefined;
}

function overStation(limits: readonly StationLimit[], load: Loading['load']): Over | undefined {
  for (const { exceeded, stations, maximumKg, when } of limits) {
    const isMet = !when || when.stations.some((station) => !isAtMost(load[station] ?? 0, when.aboveKg));
    const aboardKg = sumOf(load, stations);
    if (isMet && !isAtMost(aboardKg, maximumKg)) return { exceeded, overKg: aboardKg - maximumKg };
  }
  return undefined;
}

/** Returns the tail ballast that is more than its table allows for the water aboard. */
function overMatched(aircraft: LoadedAircraft, load: Loading['load']): Over | undefined {
  for (const { id, matched } of waterTanksOf(aircraft)) {
    if (!matched) continue;
    const allowedKg = interpolate(
      matchedRows(matched.table),
      sumOf(load, matched.to),
      (row) => row.massKg,
      (row) => row.ballastKg,
    );
    const aboardKg = load[id] ?? 0;
    if (!isAtMost(aboardKg, allowedKg))
      return { exceeded: { kind: 'matched-ballast', id }, overKg: aboardKg - allowedKg };
  }
  return undefined;
}

/**
 * Returns the refusal if nobody flies the aircraft, or if the pilot is too light; else undefined. Min. masses of
 * passengers are not limits of the aircraft.
 */
function crewVerdict(
  seats: readonly LoadStation[],
  load: Loading['load'],
  least: LeastPilot | undefined,
): RefusedLoading | undefined {
  const people = seats.filter((seat) => isSeat(seat) && (load[seat.id] ?? 0) > 0);
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

interface StationLimit {
  exceeded: ExceededLimit;
  stations: readonly string[];
  maximumKg: number;
  when?: { stations: readonly string[]; aboveKg: number } | undefined;
}

const atStation = (id: string, maximumKg: number): StationLimit => ({
  exceeded: { kind: 'station', id },
  stations: [id],
  maximumKg,
});

function stationLimits(aircraft: LoadedAircraft): StationLimit[] {
  return [
    ...loadStationsOf(aircraft).map(({ id, maximumMassKg }) => atStation(id, maximumMassKg)),
    ...(aircraft.loadingLimits ?? []).map(({ id, stations, maximumMassKg, when }) => ({
      exceeded: { kind: 'loading-limit', id } as const,
      stations,
      maximumKg: maximumMassKg,
      when,
    })),
    ...tanksAndWaterOf(aircraft).map((tank) =>
      atStation(tank.id, Math.max(0, usableFuel(tank, tank.capacityL).massKg)),
    ),
  ];
}
