import type { LoadedAircraft, LoadStation, TankStation } from '../../record/visit.ts';
import { type MassMoment, minus } from '../mass/mass-moment.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import { type Chord, chordOf, tankContent, tanksAndWaterOf, unusableOf, usableFuel } from './fuel.ts';
import { type JointLimits, jointLimits } from './joint-limits.ts';
import { areLaminar, type Group, type LoadSpace } from './space.ts';

// A passenger seat counts as any mass from zero to its maximum: a minimum passenger mass is no limit of the
// aircraft, and the full range is the safe side. A tank with a table of arms is followed by chords, whose error goes with
// the space; `extremes` halves spaces until it is small.

/** Restriction of a load: a fixed or limited mass on a station, in kg. Fuel stations count usable fuel. */
export type Restriction = Readonly<Record<string, { minimumKg?: number; maximumKg?: number }>>;

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
  const statedKg = station.kind === 'pilot' ? (station.minimumMassKg ?? leastPilotKg) : 0;
  const narrowed = restriction[station.id] ?? {};
  const maximumKg = Math.min(station.maximumMassKg, narrowed.maximumKg ?? Number.POSITIVE_INFINITY);
  return { minimumKg: Math.min(narrowed.minimumKg ?? statedKg, maximumKg), maximumKg };
}

/**
 * Returns all permitted loads, as sets that are linear in mass and moment; empty if even the minimum load exceeds a limit.
 *
 * @source common practice, no source
 */
export function loadSpaces(aircraft: LoadedAircraft, options: LoadSpaceOptions): LoadSpace[] {
  const { restriction = {} } = options;
  return jointLimits(aircraft, options.empty.massKg).flatMap((joint) => {
    const isPossible = [...joint.maximumOn].every(([station, maximumKg]) =>
      isAtMost(leastOn(aircraft, station, options), maximumKg),
    );
    if (!isPossible) return [];
    const narrowed = narrowedBy(restriction, joint.maximumOn);
    const chords = new Map(tanksAndWaterOf(aircraft).map((tank) => [tank, wholeChord(tank, narrowed)]));
    return spaceOf(aircraft, { ...options, restriction: narrowed }, joint, chords) ?? [];
  });
}

type Chords = ReadonlyMap<TankStation, Chord>;

/** Returns the loads within one set of joint limits and one chord for each tank; undefined without any. */
function spaceOf(
  aircraft: LoadedAircraft,
  options: LoadSpaceOptions,
  joint: JointLimits,
  chords: Chords,
): LoadSpace | undefined {
  const { empty, leastPilotKg, restriction } = options;
  const { limits, maximumMassKg } = joint;
  const errors = [...chords.values()];
  const bare: LoadSpace = {
    start: empty,
    startLoad: {},
    variables: [],
    groups: limits,
    maximumMassKg,
    isLaminar: areLaminar(limits.map(({ weights }) => weights)),
    belowKgMm: errors.reduce((sum, { belowKgMm }) => sum + belowKgMm, 0),
    aboveKgMm: errors.reduce((sum, { aboveKgMm }) => sum + aboveKgMm, 0),
    halves: () => halvesOf(chords).flatMap((half) => spaceOf(aircraft, options, joint, half) ?? []),
  };
  const seats = loadStationsOf(aircraft).map((station): Piece => {
    const { minimumKg, maximumKg } = boundsOf(station, leastPilotKg, restriction);
    return {
      station: station.id,
      start: { massKg: minimumKg, momentKgMm: minimumKg * station.armMm },
      span: { massKg: maximumKg - minimumKg, momentKgMm: (maximumKg - minimumKg) * station.armMm },
    };
  });
  const tanks = [...chords].map(
    ([tank, { fromL, toL }]): Piece => ({
      station: tank.id,
      start: usableFuel(tank, fromL),
      span: minus(tankContent(tank, toL), tankContent(tank, fromL)),
    }),
  );
  return [...seats, ...tanks].reduce<LoadSpace | undefined>((space, piece) => space && withPiece(space, piece), bare);
}

/** Returns the chords of both halves of the tank whose chord is the worst; none if every chord is exact. */
function halvesOf(chords: Chords): Chords[] {
  const errorOf = ({ belowKgMm, aboveKgMm }: Chord): number => belowKgMm + aboveKgMm;
  const [worst] = [...chords].sort(([, a], [, b]) => errorOf(b) - errorOf(a));
  if (!worst || errorOf(worst[1]) === 0) return [];
  const [tank, { fromL, splitL, toL }] = worst;
  return [chordOf(tank, fromL, splitL), chordOf(tank, splitL, toL)].map((half) => new Map(chords).set(tank, half));
}

/** Returns the min. mass that a station has in every loading, in kg: a condition below it is always met. */
function leastOn(aircraft: LoadedAircraft, id: string, { leastPilotKg, restriction = {} }: LoadSpaceOptions): number {
  const station = aircraft.stations.find((each) => each.id === id);
  if (!station) return 0;
  if ('capacityL' in station) return restriction[id]?.minimumKg ?? leastUsableKg(station);
  return boundsOf(station, leastPilotKg, restriction).minimumKg;
}

function leastUsableKg(tank: TankStation): number {
  return tank.kind === 'fuel' ? (tank.leastUsableL ?? 0) * tank.densityKgPerL : 0;
}

/** A condition that bounds a station tightens the restriction of the caller. */
function narrowedBy(restriction: Restriction, maximumOn: ReadonlyMap<string, number>): Restriction {
  if (maximumOn.size === 0) return restriction;
  const narrowed: Record<string, { minimumKg?: number; maximumKg?: number }> = { ...restriction };
  for (const [station, maximumKg] of maximumOn) {
    const stated = narrowed[station] ?? {};
    narrowed[station] = { ...stated, maximumKg: Math.min(maximumKg, stated.maximumKg ?? maximumKg) };
  }
  return narrowed;
}

/** Min. content of a station, and what may be added to it at one arm. */
interface Piece {
  station: string;
  start: MassMoment;
  span: MassMoment;
}

/** Returns the chord over all contents that a tank may have. */
function wholeChord(tank: TankStation, restriction: Restriction): Chord {
  const { minimumKg = leastUsableKg(tank), maximumKg = Number.POSITIVE_INFINITY } = restriction[tank.id] ?? {};
  const contentOf = (usableKg: number): number => unusableOf(tank) + usableKg / tank.densityKgPerL;
  const fromL = contentOf(Math.min(minimumKg, maximumKg));
  return chordOf(tank, fromL, Math.max(fromL, Math.min(tank.capacityL, contentOf(maximumKg))));
}

/** Returns the space with another station; undefined if its start already exceeds a group that no other load relieves. */
function withPiece(space: LoadSpace, { station, start, span }: Piece): LoadSpace | undefined {
  const groups: Group[] = [];
  for (const group of space.groups) {
    const takenKg = (group.weights.get(station) ?? 0) * start.massKg;
    const isWithin = isAtMost(takenKg, group.maximumKg);
    if (!isWithin && ![...group.weights.values()].some((weight) => weight < 0)) return undefined;
    const leftKg = group.maximumKg - takenKg;
    groups.push(takenKg === 0 ? group : { ...group, maximumKg: isWithin ? Math.max(0, leftKg) : leftKg });
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
