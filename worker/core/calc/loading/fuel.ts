import type { FuelStation, LoadedAircraft, TankStation, WaterStation } from '../../record/visit.ts';
import { type MassMoment, minus } from '../mass/mass-moment.ts';
import { interpolate } from '../numbers/interpolate.ts';

type Stationed = Pick<LoadedAircraft, 'stations'>;

/** Returns the tanks for fuel. */
export function tanksOf(aircraft: Stationed): FuelStation[] {
  return aircraft.stations.filter((station): station is FuelStation => station.kind === 'fuel');
}

/** Returns the tanks for water ballast. */
export function waterTanksOf(aircraft: Stationed): WaterStation[] {
  return aircraft.stations.filter((station): station is WaterStation => station.kind === 'water');
}

/** Returns the tanks for fuel and for water, in their order. */
export function tanksAndWaterOf(aircraft: Stationed): TankStation[] {
  return aircraft.stations.filter((station): station is TankStation => 'capacityL' in station);
}

/** Returns the content of a tank that is part of the empty mass, in l; water tanks have none. */
export function unusableOf(tank: TankStation): number {
  return tank.kind === 'fuel' ? tank.unusableL : 0;
}

/**
 * Returns the arm in mm of the whole content of a tank; from its table if it has one.
 *
 * @source common practice, no source; tables are the manufacturer’s, linear between their lines
 */
export function fuelArmMm(tank: TankStation, contentL: number): number {
  const { armByVolume, armMm = 0 } = tank;
  return armByVolume
    ? interpolate(
        armByVolume,
        contentL,
        (row) => row.volumeL,
        (row) => row.armMm,
      )
    : armMm;
}

/**
 * Returns the arm in mm at which a little more fuel in a tank acts: the slope of its moment, d(V·arm)/dV. On a line of the
 * table, the mean of the slopes on both sides.
 *
 * @source definition of a moment; the table is linear between its lines
 */
export function fuelErrorArmMm(tank: TankStation, contentL: number): number {
  const { armByVolume, capacityL } = tank;
  if (!armByVolume) return fuelArmMm(tank, contentL);
  const step = capacityL * 1e-6;
  const [below, above] = [Math.max(0, contentL - step), contentL + step];
  const momentAt = (volumeL: number): number => volumeL * fuelArmMm(tank, volumeL);
  return (momentAt(above) - momentAt(below)) / (above - below);
}

/**
 * Returns mass and moment of the whole content of a tank.
 *
 * @source definition of density
 */
export function tankContent(tank: TankStation, contentL: number): MassMoment {
  const massKg = contentL * tank.densityKgPerL;
  return { massKg, momentKgMm: massKg * fuelArmMm(tank, contentL) };
}

/**
 * Returns mass and moment of the fuel above the unusable, which belongs to the empty mass; negative below it.
 *
 * @source empty mass includes unusable fuel: FAA-H-8083-1B, from memory
 */
export function usableFuel(tank: TankStation, contentL: number): MassMoment {
  return minus(tankContent(tank, contentL), tankContent(tank, unusableOf(tank)));
}

/**
 * Returns the usable fuel of all full tanks, in kg.
 *
 * @source common practice, no source
 */
export function fullFuelKg(aircraft: LoadedAircraft): number {
  return tanksOf(aircraft).reduce((sum, tank) => sum + usableFuel(tank, tank.capacityL).massKg, 0);
}

/** A straight line between the moments of a tank at two contents, and how far those of its table lie off it. */
export interface Chord {
  fromL: number;
  toL: number;
  /** How far moments lie below the line, and above it, in kg·mm. */
  belowKgMm: number;
  aboveKgMm: number;
  /** Content whose moment lies furthest off, or the bend next to it. */
  splitL: number;
}

/**
 * Returns a chord of the moments of a tank.
 *
 * The arm is linear between the lines of a table, so its moment is a parabola there: M = ρ·(a·V + b·V²), off a chord over
 * ΔV by up to ρ·|b|·ΔV²/4. Over lines of the table its moment bends, and is furthest off at a bend or where a parabola
 * runs in the direction of the chord.
 *
 * @source our own derivation, in this comment; checked by tests/core/calc/loading/fuel.test.ts
 */
export function chordOf(tank: TankStation, fromL: number, toL: number): Chord {
  const chord: Chord = { fromL, toL, belowKgMm: 0, aboveKgMm: 0, splitL: (fromL + toL) / 2 };
  if (!tank.armByVolume || !(toL > fromL)) return chord;
  const momentAt = (contentL: number): number => tankContent(tank, contentL).momentKgMm;
  const [begin, end] = [momentAt(fromL), momentAt(toL)];
  const slope = (end - begin) / (toL - fromL);
  const bends = bendsOf(tank).filter((at) => at > fromL && at < toL);
  const tried = [fromL, ...bends, toL].flatMap((at, index, all) => [
    at,
    ...turningIn(tank, slope, all[index - 1] ?? at, at),
  ]);
  let furthest = 0;
  for (const at of tried) {
    const off = momentAt(at) - begin - slope * (at - fromL);
    chord.belowKgMm = Math.max(chord.belowKgMm, -off);
    chord.aboveKgMm = Math.max(chord.aboveKgMm, off);
    if (Math.abs(off) > furthest) [furthest, chord.splitL] = [Math.abs(off), at];
  }
  // Pieces between two bends have the simplest shape, so a bend is split at first.
  const { splitL } = chord;
  const nearest = bends.sort((a, b) => Math.abs(a - splitL) - Math.abs(b - splitL))[0];
  return { ...chord, splitL: nearest ?? splitL };
}

/** The content within a piece of a table at which moments rise as a chord does; none where they are straight. */
function turningIn(tank: TankStation, slope: number, fromL: number, toL: number): number[] {
  if (!(toL > fromL)) return [];
  const perL = (fuelArmMm(tank, toL) - fuelArmMm(tank, fromL)) / (toL - fromL);
  if (perL === 0) return [];
  // d(ρ·V·arm)/dV = ρ·(arm + V·b), and arm = arm₁ + b·(V − V₁)
  const at = (slope / tank.densityKgPerL - fuelArmMm(tank, fromL) + perL * fromL) / (2 * perL);
  return at > fromL && at < toL ? [at] : [];
}

/**
 * Returns the contents in l at which the moment of a tank bends, from unusable to full: the lines of its table.
 *
 * @source definition
 */
export function bendsOf(tank: TankStation): number[] {
  const fromL = unusableOf(tank);
  const toL = Math.max(fromL, tank.capacityL);
  const within = (tank.armByVolume ?? []).map(({ volumeL }) => volumeL).filter((at) => at > fromL && at < toL);
  return [fromL, ...within.sort((a, b) => a - b), toL];
}
