import type { FuelStation, LoadedAircraft } from '../../record/visit.ts';
import { type MassMoment, minus } from '../mass/mass-moment.ts';
import { interpolate } from '../numbers/interpolate.ts';

/** The tanks of an aircraft. */
export function tanksOf(aircraft: LoadedAircraft): FuelStation[] {
  return aircraft.stations.filter((station): station is FuelStation => station.kind === 'fuel');
}

/**
 * Arm in mm of the whole content of a tank; from its table where it has one.
 *
 * @source common practice, no source; tables are the maker’s, read as straight between their lines
 */
export function fuelArmMm(tank: FuelStation, contentL: number): number {
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
 * Mass and moment of the whole content of a tank.
 *
 * @source definition of density
 */
export function fuelContent(tank: FuelStation, contentL: number): MassMoment {
  const massKg = contentL * tank.densityKgPerL;
  return { massKg, momentKgMm: massKg * fuelArmMm(tank, contentL) };
}

/**
 * Mass and moment of the fuel above the unusable, which belongs to the empty mass; negative below it.
 *
 * @source empty mass includes unusable fuel: FAA-H-8083-1B, from memory
 */
export function usableFuel(tank: FuelStation, contentL: number): MassMoment {
  return minus(fuelContent(tank, contentL), fuelContent(tank, tank.unusableL));
}

/**
 * Usable fuel of all tanks together when full, in kg.
 *
 * @source common practice, no source
 */
export function fullFuelKg(aircraft: LoadedAircraft): number {
  return tanksOf(aircraft).reduce((sum, tank) => sum + usableFuel(tank, tank.capacityL).massKg, 0);
}

/** Straight lines by which the parabolas of all tanks with a table are followed, taken together, and the most for one. */
const CHORDS = { together: 144, each: 32 } as const;

/**
 * Contents in l, rising from unusable to full, between which the moment of a tank is taken as straight.
 *
 * A tank with one arm needs no more than its ends. With a table the arm is linear between its lines, so the moment is a
 * parabola there; a chord over 1/32 of a tank stays within a few hundredths of a millimetre of the aircraft's centre of gravity.
 *
 * @source our own division; the bound of the error is worked out in the comment
 */
export function fuelSteps(tank: FuelStation, tabledTanks: number): number[] {
  const { unusableL, capacityL, armByVolume } = tank;
  const span = Math.max(capacityL - unusableL, 0);
  const chords = armByVolume ? Math.min(CHORDS.each, Math.max(1, Math.floor(CHORDS.together ** (1 / tabledTanks)))) : 1;
  return Array.from({ length: chords + 1 }, (_, step) => unusableL + (span * step) / chords);
}
