import type { LoadedAircraft, LoadStation, TankStation } from '../../record/visit.ts';
import { type MassMoment, minus } from '../mass/mass-moment.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import { type Chord, chordOf, tankContent, tanksAndWaterOf, unusableOf, usableFuel } from './fuel.ts';
import { type JointLimits, jointLimits } from './joint-limits.ts';
import { closed, type Group, isRelaxable, type LoadSpace, withoutIdleLimits } from './space.ts';

// A passenger seat counts as any mass from zero to its maximum: a minimum passenger mass is no limit of the
// aircraft, and the full range is the safe side. A tank with a table of arms is followed by chords, whose error goes with
// the space; `extremes` halves spaces until it is small.

interface Bounds {
  minimumKg?: number;
  maximumKg?: number;
}

/** Restriction of a load: a fixed or limited mass on a station, in kg. Fuel stations count usable fuel. */
export type Restriction = Readonly<Record<string, Bounds>>;

export interface LoadSpaceOptions {
  empty: MassMoment;
  /** Min. mass of the pilot if the aircraft's own documents state none. */
  leastPilotKg: number;
  restriction?: Restriction;
}

/** Returns seats, baggage compartments and other places for a mass at one arm. */
export function loadStationsOf(aircraft: Pick<LoadedAircraft, 'stations'>): LoadStation[] {
  return aircraft.stations.filter(
    (station): station is LoadStation => station.kind !== 'fuel' && station.kind !== 'water',
  );
}

/** Whether a person sits there. */
export function isSeat({ kind }: LoadStation): boolean {
  return kind === 'pilot' || kind === 'passenger';
}

/** Whether baggage goes there: a compartment, or a locker in a float. */
export function isBaggagePlace({ kind }: LoadStation): boolean {
  return kind === 'baggage' || kind === 'locker';
}

/**
 * Returns the min. and max. permitted mass on a load station in flight.
 *
 * @source common practice, no source; the min. mass of a pilot is in the regime if the aircraft states none
 */
export function boundsOf(
  station: LoadStation,
  leastPilotKg: number,
  restriction: Restriction = {},
): { minimumKg: number; maximumKg: number } {
  const least = station.kind === 'pilot' ? (station.minimumMassKg ?? leastPilotKg) : 0;
  const narrowed = restriction[station.id] ?? {};
  const maximumKg = Math.min(station.maximumMassKg, narrowed.maximumKg ?? Number.POSITIVE_INFINITY);
  return { minimumKg: Math.min(narrowed.minimumKg ?? least, maximumKg), maximumKg };
}

/**
 * Returns all permitted loads, as sets that are linear in mass and moment; empty if even the minimum load exceeds a limit.
 *
 * @source common practice, no source
 */
export function loadSpaces(aircraft: LoadedAircraft, options: LoadSpaceOptions): LoadSpace[] {
  const tanks = tanksAndWaterOf(aircraft);
  const bases = jointLimits(aircraft, options.empty.massKg).flatMap((joint) => baseOf(aircraft, options, joint) ?? []);
  return distinct(bases).flatMap(({ space, ofTanks }) => {
    const chords = new Map(tanks.map((tank) => [tank, wholeChord(tank, ofTanks[tank.id] ?? {})]));
    return withTanks(space, chords) ?? [];
  });
}

type Chords = ReadonlyMap<TankStation, Chord>;

/** Returns the space with one chord for each tank; undefined if their min. contents exceed a limit. */
function withTanks(base: LoadSpace, chords: Chords): LoadSpace | undefined {
  const errors = [...chords.values()];
  const bare: LoadSpace = {
    ...base,
    belowKgMm: errors.reduce((sum, { belowKgMm }) => sum + belowKgMm, 0),
    aboveKgMm: errors.reduce((sum, { aboveKgMm }) => sum + aboveKgMm, 0),
    halves: () => halvesOf(chords).flatMap((half) => withTanks(base, half) ?? []),
  };
  let space: LoadSpace | undefined = bare;
  for (const [tank, { fromL, toL }] of chords) {
    const span = minus(tankContent(tank, toL), tankContent(tank, fromL));
    space = withPiece(space, { station: tank.id, start: usableFuel(tank, fromL), span });
    if (!space) return undefined;
  }
  return closed(space);
}

/** Returns the chords of both halves of the tank whose chord is the worst; none if every chord is exact. */
function halvesOf(chords: Chords): Chords[] {
  const errorOf = ({ belowKgMm, aboveKgMm }: Chord): number => belowKgMm + aboveKgMm;
  const [worst] = [...chords].sort(([, a], [, b]) => errorOf(b) - errorOf(a));
  if (!worst || errorOf(worst[1]) === 0) return [];
  const [tank, { fromL, splitL, toL }] = worst;
  return [chordOf(tank, fromL, splitL), chordOf(tank, splitL, toL)].map((half) => new Map(chords).set(tank, half));
}

/** Load stations of one set of limits, and what its conditions leave of the tanks. */
interface Base {
  space: LoadSpace;
  ofTanks: Restriction;
}

/** Undefined if the min. load of a station is over its limit in this set. */
function baseOf(
  aircraft: LoadedAircraft,
  { empty, leastPilotKg, restriction = {} }: LoadSpaceOptions,
  { limits, maximumOn, maximumMassKg }: JointLimits,
): Base | undefined {
  const ofTanks: Record<string, Bounds> = {};
  for (const tank of tanksAndWaterOf(aircraft)) {
    const { minimumKg = leastOf(tank), maximumKg = Number.POSITIVE_INFINITY } = restriction[tank.id] ?? {};
    const conditionKg = maximumOn.get(tank.id) ?? maximumKg;
    if (!isAtMost(Math.min(minimumKg, maximumKg), conditionKg)) return undefined;
    ofTanks[tank.id] = { minimumKg, maximumKg: Math.min(maximumKg, conditionKg) };
  }
  let space: LoadSpace | undefined = {
    start: empty,
    startLoad: {},
    variables: [],
    groups: limits,
    maximumMassKg,
    isLaminar: true,
    belowKgMm: 0,
    aboveKgMm: 0,
    halves: () => [],
  };
  for (const station of loadStationsOf(aircraft)) {
    const bounds = boundsOf(station, leastPilotKg, restriction);
    const maximumKg = Math.min(bounds.maximumKg, maximumOn.get(station.id) ?? bounds.maximumKg);
    if (!isAtMost(bounds.minimumKg, maximumKg)) return undefined;
    const minimumKg = Math.min(bounds.minimumKg, maximumKg);
    space = withPiece(space, {
      station: station.id,
      start: { massKg: minimumKg, momentKgMm: minimumKg * station.armMm },
      span: { massKg: maximumKg - minimumKg, momentKgMm: (maximumKg - minimumKg) * station.armMm },
    });
    if (!space) return undefined;
  }
  const movable = new Set([...space.variables.map(({ station }) => station), ...Object.keys(ofTanks)]);
  return { space: withoutIdleLimits(space, movable), ofTanks };
}

/** Sets of conditions often differ only in stations that carry nothing: such spaces are one. */
function distinct(bases: readonly Base[]): readonly Base[] {
  if (bases.length < 2) return bases;
  const keyOf = ({ space: { groups, ...space }, ofTanks }: Base): string =>
    JSON.stringify([space, ofTanks, groups.map(({ weights, maximumKg }) => [[...weights], maximumKg])]);
  return [...new Map(bases.map((base) => [keyOf(base), base])).values()];
}

/** Min. content of a station, and what may be added to it at one arm. */
interface Piece {
  station: string;
  start: MassMoment;
  span: MassMoment;
}

/** Returns the min. usable content of a tank in flight, in kg. */
function leastOf(tank: TankStation): number {
  return tank.kind === 'fuel' ? (tank.leastUsableL ?? 0) * tank.densityKgPerL : 0;
}

/** Returns the chord over all contents that a tank may have. */
function wholeChord(tank: TankStation, { minimumKg = 0, maximumKg = Number.POSITIVE_INFINITY }: Bounds): Chord {
  const contentOf = (usableKg: number): number => unusableOf(tank) + usableKg / tank.densityKgPerL;
  const fromL = contentOf(Math.min(minimumKg, maximumKg));
  return chordOf(tank, fromL, Math.max(fromL, Math.min(tank.capacityL, contentOf(maximumKg))));
}

/** Returns the space with another station; undefined if its start already exceeds a group that nothing relaxes. */
function withPiece(space: LoadSpace, { station, start, span }: Piece): LoadSpace | undefined {
  const groups: Group[] = [];
  for (const group of space.groups) {
    const takenKg = (group.weights.get(station) ?? 0) * start.massKg;
    const canRelax = isRelaxable(group);
    if (!isAtMost(takenKg, group.maximumKg) && !canRelax) return undefined;
    const leftKg = group.maximumKg - takenKg;
    groups.push(takenKg === 0 ? group : { ...group, maximumKg: canRelax ? leftKg : Math.max(0, leftKg) });
  }
  const variable = { station, maximumKg: span.massKg, armMm: span.massKg > 0 ? span.momentKgMm / span.massKg : 0 };
  return {
    ...space,
    start: { massKg: space.start.massKg + start.massKg, momentKgMm: space.start.momentKgMm + start.momentKgMm },
    startLoad: { ...space.startLoad, [station]: start.massKg },
    variables: span.massKg > 0 ? [...space.variables, variable] : space.variables,
    groups,
  };
}
