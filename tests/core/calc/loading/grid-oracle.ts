import type { EnvelopeCorner } from '../../../../worker/core/calc/loading/envelope.ts';
import type { FuelStation, LoadStation } from '../../../../worker/core/record/visit.ts';
import type { Loadable } from './random-aircraft.ts';

/** Moment of the usable fuel in a tank, straight from its table: usable kg to kg·mm. */
export type TankMoment = (usableKg: number) => number;

/** Arm of the whole content by the table of a tank, by its own interpolation. */
function armAt({ armByVolume = [] }: FuelStation, contentL: number): number {
  const above = armByVolume.findIndex(({ volumeL }) => volumeL >= contentL);
  const [last, to] = [armByVolume.at(-1), armByVolume[above]];
  if (!to) return last?.armMm ?? Number.NaN;
  const from = armByVolume[above - 1];
  if (!from) return to.armMm;
  const share = (contentL - from.volumeL) / (to.volumeL - from.volumeL);
  return from.armMm * (1 - share) + to.armMm * share;
}

export function momentOf(tank: FuelStation): TankMoment {
  const { unusableL, densityKgPerL } = tank;
  const of = (contentL: number): number => contentL * densityKgPerL * armAt(tank, contentL);
  const unusable = of(unusableL);
  return (usableKg) => of(unusableL + usableKg / densityKgPerL) - unusable;
}

/** A loading of the oracle: its mass and moment, and the fuel in each tank. */
export interface Point {
  massKg: number;
  momentKgMm: number;
  fuelKg: readonly number[];
}

interface Axis {
  moment: TankMoment;
  fullKg: number;
  triedKg: number[];
}

/**
 * Every loading of an aircraft with two places and tanks with tables on a fine grid: contents in even steps and at every line of
 * the tables, and, with all but one tank on the grid, the content of that one that meets the maximum mass. Visits each with the least
 * and the greatest mass on both places, and with the one that meets the maximum mass.
 */
function visit({ aircraft, empty }: Loadable, axes: readonly Axis[], see: (point: Point) => void): void {
  const [pilot, other] = aircraft.stations as [LoadStation, LoadStation];
  const loads = [pilot.minimumMassKg ?? 0, pilot.maximumMassKg].flatMap((pilotKg) =>
    [0, other.maximumMassKg].map((otherKg) => ({ pilotKg, otherKg })),
  );
  const put = (pilotKg: number, otherKg: number, fuelKg: readonly number[], ofFuel: number): void => {
    const massKg = empty.massKg + pilotKg + otherKg + fuelKg.reduce((sum, kg) => sum + kg, 0);
    if (massKg > aircraft.maximumMassKg + 1e-9) return;
    const ofLoad = pilotKg * pilot.armMm + otherKg * other.armMm;
    see({ massKg, momentKgMm: empty.momentKgMm + ofLoad + ofFuel, fuelKg });
  };
  const roomKg = aircraft.maximumMassKg - empty.massKg;
  const isWithin = (kg: number, from: number, to: number): boolean => kg > from && kg < to;
  const fill = (index: number, fuelKg: number[], ofFuel: number, solved: number | undefined): void => {
    const axis = axes[index];
    if (axis) {
      for (const kg of index === solved ? [0] : axis.triedKg)
        fill(index + 1, [...fuelKg, kg], ofFuel + axis.moment(kg), solved);
      return;
    }
    const fuel = fuelKg.reduce((sum, kg) => sum + kg, 0);
    const meeting = solved === undefined ? undefined : axes[solved];
    for (const { pilotKg, otherKg } of loads) {
      if (solved === undefined || !meeting) {
        put(pilotKg, otherKg, fuelKg, ofFuel);
        continue;
      }
      const kg = roomKg - pilotKg - otherKg - fuel;
      if (!isWithin(kg, 0, meeting.fullKg)) continue;
      put(pilotKg, otherKg, fuelKg.with(solved, kg), ofFuel + meeting.moment(kg));
    }
    if (solved !== undefined) return;
    for (const pilotKg of [pilot.minimumMassKg ?? 0, pilot.maximumMassKg]) {
      const otherKg = roomKg - fuel - pilotKg;
      if (isWithin(otherKg, 0, other.maximumMassKg)) put(pilotKg, otherKg, fuelKg, ofFuel);
    }
    for (const otherKg of [0, other.maximumMassKg]) {
      const pilotKg = roomKg - fuel - otherKg;
      if (isWithin(pilotKg, pilot.minimumMassKg ?? 0, pilot.maximumMassKg)) put(pilotKg, otherKg, fuelKg, ofFuel);
    }
  };
  fill(0, [], 0, undefined);
  for (const solved of axes.keys()) fill(0, [], 0, solved);
}

/** How a loading is valued: the smallest value is sought. */
export type Value = (point: Point) => number;

export const VALUES = {
  forward: ({ massKg, momentKgMm }: Point) => momentKgMm / massKg,
  aft: ({ massKg, momentKgMm }: Point) => -momentKgMm / massKg,
};

/** Arm inside one limit of an envelope with one straight piece a side; infinite outside its masses. */
export function marginTo([low, high]: readonly [EnvelopeCorner, EnvelopeCorner], sign: 1 | -1): Value {
  return ({ massKg, momentKgMm }) => {
    if (massKg < low.massKg || massKg > high.massKg) return Number.POSITIVE_INFINITY;
    const limitMm = low.armMm + ((massKg - low.massKg) / (high.massKg - low.massKg)) * (high.armMm - low.armMm);
    return sign * (momentKgMm / massKg - limitMm);
  };
}

/**
 * The smallest value of all loadings, on a grid and then on a finer one around the best point of it; infinite when nothing is legal.
 *
 * @param steps of the grid for each tank
 */
export function gridLeast(loadable: Loadable, value: Value, steps: number): number {
  const tanks = loadable.aircraft.stations.filter((station): station is FuelStation => station.kind === 'fuel');
  const axisOf = (tank: FuelStation, fromKg: number, toKg: number, count: number): Axis => {
    const { capacityL, unusableL, densityKgPerL, armByVolume = [] } = tank;
    const fullKg = (capacityL - unusableL) * densityKgPerL;
    const [from, to] = [Math.max(0, fromKg), Math.min(fullKg, toKg)];
    const even = Array.from({ length: count + 1 }, (_, step) => from + ((to - from) * step) / count);
    const lines = armByVolume.map(({ volumeL }) => (volumeL - unusableL) * densityKgPerL);
    return { moment: momentOf(tank), fullKg, triedKg: [...even, ...lines.filter((kg) => kg > from && kg < to)] };
  };
  let [best, least] = [undefined as Point | undefined, Number.POSITIVE_INFINITY];
  const see = (point: Point): void => {
    const at = value(point);
    if (at < least) [best, least] = [point, at];
  };
  visit(
    loadable,
    tanks.map((tank) => axisOf(tank, 0, Number.POSITIVE_INFINITY, steps)),
    see,
  );
  const around = best?.fuelKg ?? [];
  const finer = tanks.map((tank, index) => {
    const stepKg = ((tank.capacityL - tank.unusableL) * tank.densityKgPerL) / steps;
    return axisOf(tank, (around[index] ?? 0) - stepKg, (around[index] ?? 0) + stepKg, 12);
  });
  if (best) visit(loadable, finer, see);
  return least;
}
