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
 * @source definition of the moment; the table is linear between its lines
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

/** Error of all chords together that is sought, in mm of the aircraft’s centre of gravity, and the most pieces. */
const CHORDS = { errorMm: 0.04, together: 1200 } as const;

export interface ChordOptions {
  /** Tanks with a table of arms. */
  tabledTanks: number;
  /** Mass of the lightest aircraft that the error is felt in. */
  aircraftKg: number;
  /** Sets of limits that are followed, each over all pieces. @default 1 */
  sets?: number;
}

/**
 * Returns contents in l, rising from unusable to full, between which the moment of a tank is taken as linear.
 *
 * A tank with one arm needs only its ends. With a table the arm is linear between the table’s own lines, so the moment
 * is a parabola there: M = ρ·(a·V + b·V²). A chord over ΔV misses it by at most ρ·|b|·ΔV²/4. Each line of the table
 * is one of the contents, and the chords between are as many as the error needs.
 *
 * @source our own derivation, in this comment; checked by tests/core/calc/loading/bends.test.ts
 */
export function tankLines(tank: TankStation, { tabledTanks, aircraftKg, sets = 1 }: ChordOptions): number[] {
  const { capacityL, armByVolume, densityKgPerL } = tank;
  const fromL = unusableOf(tank);
  if (!armByVolume) return [fromL, Math.max(fromL, capacityL)];
  const lines = bendsOf(tank);
  const allPieces = Math.max(1, Math.floor((CHORDS.together / sets) ** (1 / tabledTanks)));
  // Many tables with many lines: too many pieces to combine, so chords pass over some lines.
  if (lines.length - 1 > allPieces) return evenly(fromL, lines.at(-1) ?? fromL, allPieces);
  const most = Math.max(1, Math.floor(allPieces / Math.max(1, lines.length - 1)));
  const allowed = (CHORDS.errorMm / tabledTanks) * Math.max(aircraftKg, 1);
  return [
    fromL,
    ...lines.slice(1).flatMap((toL, index) => {
      const beginL = lines[index] ?? fromL;
      const spanL = toL - beginL;
      const bend = spanL > 0 ? Math.abs(fuelArmMm(tank, toL) - fuelArmMm(tank, beginL)) / spanL : 0;
      const chords = Math.min(
        most,
        Math.max(1, Math.ceil(Math.sqrt((densityKgPerL * bend * spanL ** 2) / 4 / allowed))),
      );
      return Array.from({ length: chords }, (_, step) => beginL + (spanL * (step + 1)) / chords);
    }),
  ];
}

const evenly = (fromL: number, toL: number, pieces: number): number[] =>
  Array.from({ length: pieces + 1 }, (_, step) => fromL + ((toL - fromL) * step) / pieces);

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
