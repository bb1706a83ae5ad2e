import type { LoadedAircraft, WaterStation } from '../../record/visit.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import { tanksAndWaterOf, usableFuel } from './fuel.ts';
import { massLimitsOf } from './mass-limits.ts';
import { matchedRows } from './matched-rows.ts';
import type { Group } from './space.ts';

/** Limits of a set of loads: either the condition of each conditional limit is not met, or the limit holds. */
export interface JointLimits {
  limits: Group[];
  /** Max. mass on stations whose condition is not met, in kg. */
  maximumOn: ReadonlyMap<string, number>;
  maximumMassKg: number;
}

/**
 * Conditions that are followed one by one: each doubles the sets of loads. Further conditional limits are left out of
 * the extremes, which is the safe side; a single loading is always compared with all of them.
 */
const MAX_CONDITIONS = 6;

const plain = (stations: Iterable<string>, maximumKg: number): Group => ({
  weights: new Map([...stations].map((station) => [station, 1])),
  maximumKg,
});

/**
 * Returns the limits that join stations, one set for each choice of the conditions.
 *
 * Without usable fuel the aircraft is bound by its maximum zero-fuel mass, and by its maximum landing mass: a loading
 * that can never land is not permitted.
 *
 * @param emptyKg empty mass
 * @source common practice, no source
 */
export function jointLimits(aircraft: LoadedAircraft, emptyKg: number): JointLimits[] {
  const always = [
    ...statedLimits(aircraft),
    ...massLimitsOf(aircraft).map(({ stations, maximumKg }) => plain(stations, maximumKg - emptyKg)),
    ...matchedLimits(aircraft),
    ...leastMass(aircraft, emptyKg),
  ];
  const hasExternal = aircraft.stations.some(({ kind }) => kind === 'external');
  const { maximumMassKg, maximumMassWithExternalLoadKg } = aircraft;
  const first: JointLimits = {
    limits: always,
    maximumOn: new Map(),
    maximumMassKg: hasExternal ? (maximumMassWithExternalLoadKg ?? maximumMassKg) : maximumMassKg,
  };
  const conditional = (aircraft.loadingLimits ?? []).filter(({ when }) => when).slice(0, MAX_CONDITIONS);
  return conditional.reduce<JointLimits[]>(
    (sets, { stations, maximumMassKg: maximumKg, when }) =>
      sets.flatMap((set) => [
        { ...set, limits: [...set.limits, plain(stations, maximumKg)] },
        { ...set, maximumOn: lowered(set.maximumOn, when?.stations ?? [], when?.aboveKg ?? 0) },
      ]),
    [first],
  );
}

function lowered(
  maximumOn: ReadonlyMap<string, number>,
  stations: readonly string[],
  toKg: number,
): ReadonlyMap<string, number> {
  const next = new Map(maximumOn);
  for (const station of stations) next.set(station, Math.min(toKg, next.get(station) ?? toKg));
  return next;
}

function statedLimits({ loadingLimits = [] }: LoadedAircraft): Group[] {
  return loadingLimits.filter(({ when }) => !when).map(({ stations, maximumMassKg }) => plain(stations, maximumMassKg));
}

/** The aircraft is not below its minimum flying mass, even without usable fuel: its other load makes up the rest. */
function leastMass({ stations, minimumMassKg = 0 }: LoadedAircraft, emptyKg: number): Group[] {
  if (isAtMost(minimumMassKg, emptyKg)) return [];
  const load = stations.filter(({ kind }) => kind !== 'fuel');
  return [{ weights: new Map(load.map(({ id }) => [id, -1])), maximumKg: emptyKg - minimumMassKg }];
}

/**
 * Returns the limits of matched ballast: never more than the table allows for the water aboard, none without water, and
 * beyond the table what its last line allows. A table that is not concave is taken by its upper hull, which is the safe
 * side for extremes.
 */
function matchedLimits(aircraft: LoadedAircraft): Group[] {
  const mostKg = new Map(tanksAndWaterOf(aircraft).map((tank) => [tank.id, usableFuel(tank, tank.capacityL).massKg]));
  return aircraft.stations
    .filter((station): station is WaterStation => station.kind === 'water' && station.matched !== undefined)
    .flatMap(({ id, matched }) => {
      const rows = matchedRows(matched?.table ?? []);
      const fullKg = (matched?.to ?? []).reduce((sum, tank) => sum + (mostKg.get(tank) ?? 0), 0);
      const last = rows.at(-1);
      const beyond = last && last.massKg < fullKg ? [{ ...last, massKg: fullKg }] : [];
      const hull = upperHull([...rows, ...beyond].map(({ massKg, ballastKg }) => [massKg, ballastKg] as const));
      return hull.slice(1).map(([toKg, toBallastKg], index): Group => {
        const [fromKg, fromBallastKg] = hull[index] ?? [0, 0];
        const slope = toKg > fromKg ? (toBallastKg - fromBallastKg) / (toKg - fromKg) : 0;
        return {
          weights: new Map([[id, 1], ...(matched?.to ?? []).map((tank) => [tank, -slope] as const)]),
          maximumKg: fromBallastKg - slope * fromKg,
        };
      });
    });
}

/** Returns the corners of the upper hull of a table, from left to right. */
function upperHull(points: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  const hull: (readonly [number, number])[] = [];
  for (const point of points.toSorted(([a], [b]) => a - b)) {
    while (hull.length >= 2) {
      const [[ax, ay], [bx, by]] = [hull.at(-2) ?? point, hull.at(-1) ?? point];
      if ((by - ay) * (point[0] - ax) > (point[1] - ay) * (bx - ax)) break;
      hull.pop();
    }
    hull.push(point);
  }
  return hull;
}
