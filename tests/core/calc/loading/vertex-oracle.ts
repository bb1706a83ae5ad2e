import { fuelArmMm, unusableOf } from '../../../../worker/core/calc/loading/fuel.ts';
import { type MassMoment, NOTHING } from '../../../../worker/core/calc/mass/mass-moment.ts';
import type { Aircraft, FuelStation, Station, WaterStation } from '../../../../worker/core/record/visit.ts';
import type { Loadable } from './random-aircraft.ts';

/** A linear constraint on the masses of the places: Σ aᵢ·xᵢ ≤ b. */
export interface HalfSpace {
  a: number[];
  b: number;
}

interface Range {
  forwardMm: number;
  aftMm: number;
}

const CLOSE = 1e-7;

/**
 * The extremes of the centre of gravity by brute force: every corner of the polytope of legal loadings, found by solving for
 * each choice of binding constraints. On a polytope M/m takes its extremes at corners. A tank with a table, of which there may
 * be one, is stepped through instead, and tried at every content that just meets the maximum mass. Where limits have conditions the
 * loadings are a union of polytopes, and the extremes are those of them all.
 *
 * @param steps contents tried for the tank with a table
 * @returns undefined when nothing is legal
 */
export function vertexExtremes(loadable: Loadable, steps: number): Range | undefined {
  const { aircraft, empty } = loadable;
  const tabled = aircraft.stations.find((s): s is FuelStation => s.kind === 'fuel' && s.armByVolume !== undefined);
  const places = aircraft.stations.filter((station) => station !== tabled);
  const arms = places.map(({ armMm = 0 }) => armMm);
  let range: Range | undefined;
  for (const fuel of tabled ? contentsOf(tabled, loadable, places, steps) : [NOTHING]) {
    const massKg = empty.massKg + fuel.massKg;
    const momentKgMm = empty.momentKgMm + fuel.momentKgMm;
    for (const corner of unionOf(loadable, places, massKg).flatMap(cornersOf)) {
      const loadedKg = massKg + sumOf(corner);
      const cgMm = (momentKgMm + corner.reduce((sum, x, i) => sum + x * (arms[i] ?? 0), 0)) / loadedKg;
      range = { forwardMm: Math.min(range?.forwardMm ?? cgMm, cgMm), aftMm: Math.max(range?.aftMm ?? cgMm, cgMm) };
    }
  }
  return range;
}

/**
 * The most that places for crew and baggage may carry together while the tanks for fuel are full, and that all stations may carry
 * together, by brute force over every corner; undefined when nothing is legal. Every tank must have one arm.
 */
export function vertexMost({ aircraft, empty }: Loadable): {
  fullTanksKg: number | undefined;
  togetherKg: number | undefined;
} {
  const { stations } = aircraft;
  const full = stations.flatMap((station, index): HalfSpace[] =>
    station.kind === 'fuel'
      ? [
          {
            a: stations.map((_, other) => (other === index ? -1 : 0)),
            b: -(station.capacityL - station.unusableL) * station.densityKgPerL,
          },
        ]
      : [],
  );
  const most = (more: readonly HalfSpace[], counts: (station: Station) => boolean): number | undefined => {
    const corners = unionOf({ aircraft, empty }, stations, empty.massKg).flatMap((constraints) =>
      cornersOf([...constraints, ...more]),
    );
    const carried = corners.map((corner) => sumOf(corner.filter((_, index) => counts(stations[index] as Station))));
    return carried.length === 0 ? undefined : Math.max(...carried);
  };
  return { fullTanksKg: most(full, (station) => !('capacityL' in station)), togetherKg: most([], () => true) };
}

/** The least and the greatest moment of all loadings with one mass, by brute force over every corner; undefined when none is legal. */
export function vertexMoments(loadable: Loadable, massKg: number): { forward: number; aft: number } | undefined {
  const { aircraft, empty } = loadable;
  const loadKg = massKg - empty.massKg;
  const all = over(aircraft.stations, () => true, loadKg);
  const exactly = [all, { a: all.a.map((x) => -x), b: -loadKg }];
  const moments = unionOf(loadable, aircraft.stations, empty.massKg)
    .flatMap((constraints) => cornersOf([...constraints, ...exactly]))
    .map((corner) =>
      corner.reduce((sum, x, index) => sum + x * (aircraft.stations[index]?.armMm ?? 0), empty.momentKgMm),
    );
  return moments.length === 0 ? undefined : { forward: Math.min(...moments), aft: Math.max(...moments) };
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Usable fuel of a tank at the contents to be tried, every line of its table among them. */
function contentsOf(tank: FuelStation, { aircraft, empty }: Loadable, places: Station[], steps: number): MassMoment[] {
  const { unusableL, capacityL, densityKgPerL } = tank;
  const momentAt = (volumeL: number): number => volumeL * densityKgPerL * fuelArmMm(tank, volumeL);
  const stepped = Array.from({ length: steps + 1 }, (_, step) => unusableL + ((capacityL - unusableL) * step) / steps);
  const uncapped = { aircraft: { ...aircraft, maximumMassKg: Number.MAX_SAFE_INTEGER }, empty };
  const meetingCap = unionOf(uncapped, places, empty.massKg)
    .flatMap(cornersOf)
    .map((corner) => unusableL + (aircraft.maximumMassKg - empty.massKg - sumOf(corner)) / densityKgPerL)
    .filter((contentL) => contentL > unusableL && contentL < capacityL);
  const lines = (tank.armByVolume ?? []).map(({ volumeL }) => volumeL).filter((at) => at > unusableL && at < capacityL);
  return [...stepped, ...lines, ...meetingCap].map((contentL) => ({
    massKg: (contentL - unusableL) * densityKgPerL,
    momentKgMm: momentAt(contentL) - momentAt(unusableL),
  }));
}

/** The constraints of each polytope of loadings: one for every choice of the conditions that are met. */
export function unionOf(loadable: Loadable, places: readonly Station[], massKg: number): HalfSpace[][] {
  const conditional = (loadable.aircraft.loadingLimits ?? []).filter(({ when }) => when);
  const choices = conditional.reduce<boolean[][]>(
    (all) =>
      all.flatMap((choice) => [
        [...choice, true],
        [...choice, false],
      ]),
    [[]],
  );
  return choices.map((isMet) => [
    ...constraintsOn(loadable, places, massKg),
    ...conditional.flatMap(({ stations, maximumMassKg, when }, index): HalfSpace[] =>
      isMet[index]
        ? [over(places, ({ id }) => stations.includes(id), maximumMassKg)]
        : (when?.stations ?? []).map((station) => over(places, ({ id }) => id === station, when?.aboveKg ?? 0)),
    ),
  ]);
}

const over = (places: readonly Station[], counts: (place: Station) => boolean, b: number): HalfSpace => ({
  a: places.map((place) => (counts(place) ? 1 : 0)),
  b,
});

const isExternal = ({ kind }: Station): boolean => kind === 'external';
const isDumped = (place: Station): boolean => place.kind === 'water' && place.isDumpable === true;

function constraintsOn({ aircraft, empty }: Loadable, places: readonly Station[], massKg: number): HalfSpace[] {
  const emptyKg = empty.massKg;
  const bounds = places.flatMap((place, index): HalfSpace[] => {
    const unit = places.map((_, other) => (other === index ? 1 : 0));
    const [least, most] =
      'capacityL' in place
        ? [0, (place.capacityL - unusableOf(place)) * place.densityKgPerL]
        : [place.kind === 'pilot' ? (place.minimumMassKg ?? 0) : 0, place.maximumMassKg];
    return [
      { a: unit, b: most },
      { a: unit.map((x) => -x), b: -least },
    ];
  });
  const { maximumMassKg, maximumMassWithExternalLoadKg: withExternalKg, nonLifting } = aircraft;
  const capped = (counts: (place: Station) => boolean, maximumKg: number | undefined): HalfSpace[] =>
    maximumKg === undefined ? [] : [over(places, counts, maximumKg)];
  return [
    ...bounds,
    over(places, () => true, (places.some(isExternal) ? (withExternalKg ?? maximumMassKg) : maximumMassKg) - massKg),
    ...(withExternalKg === undefined ? [] : [over(places, (place) => !isExternal(place), maximumMassKg - massKg)]),
    ...(aircraft.loadingLimits ?? [])
      .filter(({ when }) => !when)
      .map(({ stations, maximumMassKg: maximumKg }) => over(places, ({ id }) => stations.includes(id), maximumKg)),
    ...capped(({ kind }) => kind !== 'fuel', less(aircraft.maximumZeroFuelMassKg, emptyKg)),
    ...capped((place) => place.kind !== 'fuel' && !isDumped(place), less(aircraft.maximumLandingMassKg, emptyKg)),
    // Everything but the wings, of the empty aircraft and of the load.
    ...capped(
      ({ isNonLifting, kind }) => isNonLifting ?? kind !== 'water',
      nonLifting && nonLifting.maximumMassKg - (emptyKg - nonLifting.liftingPartsMassKg),
    ),
    ...least(places, aircraft, emptyKg),
    ...places.flatMap((place) => (place.kind === 'water' ? matchedTo(place, places) : [])),
  ];
}

const less = (limitKg: number | undefined, emptyKg: number): number | undefined =>
  limitKg === undefined ? undefined : limitKg - emptyKg;

/** Without fuel the aircraft is not below its minimum flying mass. */
function least(places: readonly Station[], { minimumMassKg }: Aircraft, emptyKg: number): HalfSpace[] {
  if (minimumMassKg === undefined) return [];
  return [{ a: places.map(({ kind }) => (kind === 'fuel' ? 0 : -1)), b: emptyKg - minimumMassKg }];
}

/** Ballast below every straight piece of its table, which must be concave: a table of nothing without water, and level beyond its end. */
function matchedTo({ id, matched }: WaterStation, places: readonly Station[]): HalfSpace[] {
  if (!matched) return [];
  const rows = [{ massKg: 0, ballastKg: 0 }, ...matched.table.filter(({ massKg }) => massKg > 0)];
  const pieces = rows.slice(1).map(({ massKg, ballastKg }, index) => {
    const from = rows[index] ?? { massKg: 0, ballastKg: 0 };
    const slope = (ballastKg - from.ballastKg) / (massKg - from.massKg);
    return { slope, offsetKg: ballastKg - slope * massKg };
  });
  return [...pieces, { slope: 0, offsetKg: rows.at(-1)?.ballastKg ?? 0 }].map(({ slope, offsetKg }) => ({
    a: places.map((place) => (place.id === id ? 1 : matched.to.includes(place.id) ? -slope : 0)),
    b: offsetKg,
  }));
}

/** Every point where as many constraints bind as there are places, and none is broken. */
export function cornersOf(constraints: readonly HalfSpace[]): number[][] {
  const size = constraints[0]?.a.length ?? 0;
  return choicesOf(constraints, size).flatMap((chosen) => {
    const point = solve(chosen);
    const isLegal =
      point && constraints.every(({ a, b }) => a.reduce((sum, x, i) => sum + x * (point[i] ?? 0), 0) <= b + CLOSE);
    return isLegal ? [point] : [];
  });
}

function choicesOf<T>(from: readonly T[], size: number): T[][] {
  if (size === 0) return [[]];
  return from.flatMap((first, index) => choicesOf(from.slice(index + 1), size - 1).map((rest) => [first, ...rest]));
}

/** Gaussian elimination with pivoting; undefined where the equations do not meet in one point. */
function solve(equations: readonly HalfSpace[]): number[] | undefined {
  const rows = equations.map(({ a, b }) => [...a, b]);
  const size = rows.length;
  for (let column = 0; column < size; column++) {
    const order = rows.slice(column).sort((p, q) => Math.abs(q[column] ?? 0) - Math.abs(p[column] ?? 0));
    rows.splice(column, order.length, ...order);
    const pivotRow = rows[column] ?? [];
    const pivot = pivotRow[column] ?? 0;
    if (Math.abs(pivot) < 1e-9) return undefined;
    for (const [index, row] of rows.entries()) {
      if (index === column) continue;
      const factor = (row[column] ?? 0) / pivot;
      for (let k = column; k <= size; k++) row[k] = (row[k] ?? 0) - factor * (pivotRow[k] ?? 0);
    }
  }
  return rows.map((row, index) => (row[size] ?? 0) / (row[index] ?? 1));
}
