import type { LoadedAircraft, LoadStation, TankStation } from '../../record/visit.ts';
import { type MassMoment, minus } from '../mass/mass-moment.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import { tankContent, tankLines, tanksAndWaterOf, unusableOf, usableFuel } from './fuel.ts';
import { jointLimits } from './joint-limits.ts';
import { areLaminar, type Group, type LoadSpace } from './space.ts';

// A passenger seat counts as any mass from zero to its maximum: a minimum passenger mass is no limit of the
// aircraft, and the full range is the safe side. A tank with a table of arms is followed by chords; `tankLines` bounds
// their error.

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
 * Returns all permitted loads, as pieces that are linear in mass and moment; empty if even the minimum load exceeds a
 * limit.
 *
 * @source common practice, no source
 */
export function loadSpaces(aircraft: LoadedAircraft, options: LoadSpaceOptions): LoadSpace[] {
  const { empty, leastPilotKg, restriction = {} } = options;
  return jointLimits(aircraft, empty.massKg).flatMap(({ limits, maximumOn, maximumMassKg }) => {
    const isPossible = [...maximumOn].every(([station, maximumKg]) =>
      isAtMost(leastOn(aircraft, station, options), maximumKg),
    );
    if (!isPossible) return [];
    const narrowed = narrowedBy(restriction, maximumOn);
    const seats = loadStationsOf(aircraft).map((station) => ({
      station,
      ...boundsOf(station, leastPilotKg, narrowed),
    }));
    const bare: LoadSpace = {
      start: empty,
      startLoad: {},
      variables: [],
      groups: limits,
      maximumMassKg,
      isLaminar: areLaminar(limits.map(({ weights }) => weights)),
    };
    const base = seats.reduce<LoadSpace | undefined>(
      (space, { station, minimumKg, maximumKg }) =>
        space &&
        withPiece(space, {
          station: station.id,
          start: { massKg: minimumKg, momentKgMm: minimumKg * station.armMm },
          span: { massKg: maximumKg - minimumKg, momentKgMm: (maximumKg - minimumKg) * station.armMm },
        }),
      bare,
    );
    const tanks = tanksAndWaterOf(aircraft);
    const tabledTanks = tanks.filter(({ armByVolume }) => armByVolume).length;
    return tanks.reduce<LoadSpace[]>(
      (spaces, tank) => {
        const pieces = tankPieces(tank, tankLines(tank, { tabledTanks, aircraftKg: empty.massKg }), narrowed);
        return spaces.flatMap((space) => pieces.flatMap((piece) => withPiece(space, piece) ?? []));
      },
      base ? [base] : [],
    );
  });
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

function tankPieces(tank: TankStation, lines: readonly number[], restriction: Restriction): Piece[] {
  const { minimumKg = leastUsableKg(tank), maximumKg = Number.POSITIVE_INFINITY } = restriction[tank.id] ?? {};
  const contentOf = (usableKg: number): number => unusableOf(tank) + usableKg / tank.densityKgPerL;
  const from = contentOf(Math.min(minimumKg, maximumKg));
  const to = Math.max(from, Math.min(tank.capacityL, contentOf(maximumKg)));
  const inside = [from, ...lines.filter((content) => content > from && content < to), to];
  return inside.slice(1).map((end, index) => {
    const begin = inside[index] ?? from;
    return {
      station: tank.id,
      start: usableFuel(tank, begin),
      span: minus(tankContent(tank, end), tankContent(tank, begin)),
    };
  });
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
