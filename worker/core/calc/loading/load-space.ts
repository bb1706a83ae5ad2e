import type { LoadedAircraft, LoadStation } from '../../record/visit.ts';
import { type MassMoment, minus } from '../mass/mass-moment.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import { fuelContent, fuelSteps, tanksOf, usableFuel } from './fuel.ts';

// A passenger seat counts as any mass from zero to its maximum: a minimum passenger mass is no limit of the
// aircraft, and the full range is the safe side. Groups that cross are refused (LOADING_LIMITS_CROSS), because
// filling in order of arms is exact only for nested or separate groups. A tank with a table of arms is followed by
// chords of up to 1/32 of the tank; the error is hundredths of a millimetre.

/** A station that takes any mass from zero to its maximum, at one arm. */
export interface Variable {
  station: string;
  maximumKg: number;
  armMm: number;
}

/** Stations that share a maximum. Any two groups are nested or disjoint, so that filling in order of arm is exact. */
export interface Group {
  stations: ReadonlySet<string>;
  maximumKg: number;
}

/**
 * One linear piece of all loads of an aircraft: a start and the masses that may be added. A tank with a table of arms
 * adds several pieces, one for each segment of its content.
 */
export interface LoadSpace {
  start: MassMoment;
  /** Mass on each station at the start, in kg above the empty mass. */
  startLoad: Readonly<Record<string, number>>;
  variables: readonly Variable[];
  groups: readonly Group[];
  maximumMassKg: number;
}

/** Restriction of a load: a fixed or limited mass on a station, in kg. Fuel stations count usable fuel. */
export type Restriction = Readonly<Record<string, { minimumKg?: number; maximumKg?: number }>>;

export interface LoadSpaceOptions {
  empty: MassMoment;
  /** Min. mass of the pilot if the aircraft's own documents state none. */
  leastPilotKg: number;
  restriction?: Restriction;
}

/** Returns seats and baggage compartments of an aircraft. */
export function loadStationsOf(aircraft: LoadedAircraft): LoadStation[] {
  return aircraft.stations.filter((station): station is LoadStation => station.kind !== 'fuel');
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
 * Returns all permitted loads, as pieces that are linear in mass and moment; empty if even the minimum load exceeds a
 * limit.
 *
 * @source common practice, no source; that any two groups must be nested or disjoint follows from boundary()
 */
export function loadSpaces(
  aircraft: LoadedAircraft,
  { empty, leastPilotKg, restriction = {} }: LoadSpaceOptions,
): LoadSpace[] {
  const seats = loadStationsOf(aircraft).map((station) => ({
    station,
    ...boundsOf(station, leastPilotKg, restriction),
  }));
  const startLoad: Record<string, number> = {};
  let { massKg, momentKgMm } = empty;
  for (const { station, minimumKg } of seats) {
    startLoad[station.id] = minimumKg;
    massKg += minimumKg;
    momentKgMm += minimumKg * station.armMm;
  }
  const groups = groupsOf(aircraft, empty.massKg, startLoad);
  if (groups.some(({ maximumKg }) => maximumKg < 0)) return [];
  const base: LoadSpace = {
    start: { massKg, momentKgMm },
    startLoad,
    variables: seats.map(({ station, minimumKg, maximumKg }) => ({
      station: station.id,
      maximumKg: maximumKg - minimumKg,
      armMm: station.armMm,
    })),
    groups,
    maximumMassKg: aircraft.maximumMassKg,
  };
  const tanks = tanksOf(aircraft);
  const tabledTanks = tanks.filter(({ armByVolume }) => armByVolume).length;
  return tanks.reduce<LoadSpace[]>(
    (spaces, tank) => {
      const pieces = tankPieces(tank, fuelSteps(tank, tabledTanks), restriction);
      return spaces.flatMap((space) => pieces.map((piece) => withTank(space, piece)));
    },
    [base],
  );
}

/**
 * Returns the remaining capacity of each group with the minimum masses aboard; negative if these are already too much.
 * Without usable fuel the aircraft is bound by its maximum zero-fuel mass, and by its maximum landing mass: a loading
 * that can never land is not permitted.
 */
function groupsOf(aircraft: LoadedAircraft, emptyKg: number, startLoad: Readonly<Record<string, number>>): Group[] {
  const limits = (aircraft.loadingLimits ?? []).map(({ stations, maximumMassKg }) => ({
    stations: new Set(stations),
    maximumKg: maximumMassKg,
  }));
  const all = new Set(Object.keys(startLoad));
  const withoutFuel = [aircraft.maximumZeroFuelMassKg, aircraft.maximumLandingMassKg];
  for (const massKg of withoutFuel)
    if (massKg !== undefined) limits.push({ stations: all, maximumKg: massKg - emptyKg });
  return limits.map(({ stations, maximumKg }) => {
    const aboard = [...stations].reduce((sum, station) => sum + (startLoad[station] ?? 0), 0);
    return { stations, maximumKg: isAtMost(aboard, maximumKg) ? Math.max(0, maximumKg - aboard) : maximumKg - aboard };
  });
}

interface TankPiece {
  station: string;
  start: MassMoment;
  span: MassMoment;
}

function tankPieces(
  tank: ReturnType<typeof tanksOf>[number],
  steps: readonly number[],
  restriction: Restriction,
): TankPiece[] {
  const { minimumKg = 0, maximumKg = Number.POSITIVE_INFINITY } = restriction[tank.id] ?? {};
  const contentOf = (usableKg: number): number => tank.unusableL + usableKg / tank.densityKgPerL;
  const from = contentOf(minimumKg);
  const to = Math.max(from, Math.min(tank.capacityL, contentOf(maximumKg)));
  const inside = [from, ...steps.filter((content) => content > from && content < to), to];
  return inside.slice(1).map((end, index) => {
    const begin = inside[index] ?? from;
    return {
      station: tank.id,
      start: usableFuel(tank, begin),
      span: minus(fuelContent(tank, end), fuelContent(tank, begin)),
    };
  });
}

function withTank(space: LoadSpace, { station, start, span }: TankPiece): LoadSpace {
  const variable = { station, maximumKg: span.massKg, armMm: span.massKg > 0 ? span.momentKgMm / span.massKg : 0 };
  return {
    ...space,
    start: { massKg: space.start.massKg + start.massKg, momentKgMm: space.start.momentKgMm + start.momentKgMm },
    startLoad: { ...space.startLoad, [station]: start.massKg },
    variables: span.massKg > 0 ? [...space.variables, variable] : space.variables,
  };
}
