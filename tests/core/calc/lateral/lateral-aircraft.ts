import fc from 'fast-check';
import type { MassMoment } from '../../../../worker/core/calc/mass/mass-moment.ts';
import type { Aircraft } from '../../../../worker/core/record/visit.ts';
import { crossingLoadables } from '../loading/crossing-aircraft.ts';
import { cornersOf, unionOf } from '../loading/vertex-oracle.ts';

/** A small aircraft whose stations have lateral arms, and its empty condition in both axes. */
export interface LateralLoadable {
  aircraft: Aircraft;
  empty: MassMoment & { lateralKgMm: number };
}

/** Aircraft with limits that cross, and stations on both sides. */
export function lateralLoadables(): fc.Arbitrary<LateralLoadable> {
  const lateralMm = fc.integer({ min: -90, max: 90 }).map((cm) => cm * 10);
  return fc
    .tuple(crossingLoadables(), fc.array(lateralMm, { minLength: 5, maxLength: 5 }), fc.integer({ min: -40, max: 40 }))
    .map(([{ aircraft, empty }, arms, emptyLateralMm]) => ({
      aircraft: {
        ...aircraft,
        stations: aircraft.stations.map((station, index) => ({ ...station, lateralArmMm: arms[index] ?? 0 })),
      },
      empty: { ...empty, lateralKgMm: empty.massKg * emptyLateralMm },
    }));
}

/** A loading in plan: mass, and moments about datum and centre line. */
export interface PlanMass {
  massKg: number;
  momentKgMm: number;
  lateralKgMm: number;
}

/** Every corner of the polytopes of legal loadings, in plan. */
export function planCorners({ aircraft, empty }: LateralLoadable): PlanMass[] {
  const { stations } = aircraft;
  return unionOf({ aircraft, empty }, stations, empty.massKg).flatMap((constraints) =>
    cornersOf(constraints).map((corner) => plan(stations, empty, (index) => corner[index] ?? 0)),
  );
}

/** Mass and moments of a load. */
export function plan(
  stations: Aircraft['stations'],
  empty: PlanMass,
  kgOn: (index: number, station: Aircraft['stations'][number]) => number,
): PlanMass {
  return stations.reduce<PlanMass>(
    ({ massKg, momentKgMm, lateralKgMm }, station, index) => {
      const kg = kgOn(index, station);
      return {
        massKg: massKg + kg,
        momentKgMm: momentKgMm + kg * (station.armMm ?? 0),
        lateralKgMm: lateralKgMm + kg * (station.lateralArmMm ?? 0),
      };
    },
    { massKg: empty.massKg, momentKgMm: empty.momentKgMm, lateralKgMm: empty.lateralKgMm },
  );
}

type Polygon = readonly (readonly [x: number, y: number])[];

/** Corners round the convex hull of points drawn at random: no side is like another, and left is not like right. */
export const convexPolygons: fc.Arbitrary<Polygon> = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 1000 }), fc.integer({ min: -120, max: 150 })), {
    minLength: 3,
    maxLength: 8,
  })
  .map((points) => hullOf(points))
  .filter((hull) => hull.length >= 3);

/** The corners of the convex hull, anticlockwise (A. Andrew's chains). */
function hullOf(points: Polygon): Polygon {
  const rising = points.toSorted(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const chain = (along: Polygon): Polygon => {
    const kept: (readonly [number, number])[] = [];
    for (const point of along) {
      while (kept.length >= 2 && turn(kept.at(-2) ?? point, kept.at(-1) ?? point, point) <= 0) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(rising), ...chain(rising.toReversed())];
}

const turn = (a: Polygon[number], b: Polygon[number], c: Polygon[number]): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Sides of an anticlockwise polygon: how far a point lies to the left of each, which is inside, in mm. */
export function insideOf(
  polygon: Polygon,
): { isAcross: boolean; isRight: boolean; distance: (x: number, y: number) => number }[] {
  return polygon.map((from, index) => {
    const to = polygon[(index + 1) % polygon.length] ?? from;
    const [runMm, riseMm] = [to[0] - from[0], to[1] - from[1]];
    return {
      isAcross: runMm === 0,
      // Anticlockwise with the arm to the right and the right side up: the upper side runs back.
      isRight: runMm < 0,
      distance: (x, y) => turn(from, to, [x, y]) / Math.hypot(runMm, riseMm),
    };
  });
}
