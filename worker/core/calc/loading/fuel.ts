import type { FuelStation, LoadedAircraft } from '../../record/visit.ts';
import { type MassMoment, minus } from '../mass/mass-moment.ts';
import { interpolate } from '../numbers/interpolate.ts';

/** Returns the tanks of an aircraft. */
export function tanksOf(aircraft: LoadedAircraft): FuelStation[] {
  return aircraft.stations.filter((station): station is FuelStation => station.kind === 'fuel');
}

/**
 * Returns the arm in mm of the whole content of a tank; from its table if it has one.
 *
 * @source common practice, no source; tables are the manufacturer’s, linear between their lines
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
 * Returns mass and moment of the whole content of a tank.
 *
 * @source definition of density
 */
export function fuelContent(tank: FuelStation, contentL: number): MassMoment {
  const massKg = contentL * tank.densityKgPerL;
  return { massKg, momentKgMm: massKg * fuelArmMm(tank, contentL) };
}

/**
 * Returns mass and moment of the fuel above the unusable, which belongs to the empty mass; negative below it.
 *
 * @source empty mass includes unusable fuel: FAA-H-8083-1B, from memory
 */
export function usableFuel(tank: FuelStation, contentL: number): MassMoment {
  return minus(fuelContent(tank, contentL), fuelContent(tank, tank.unusableL));
}

/**
 * Returns the usable fuel of all full tanks, in kg.
 *
 * @source common practice, no source
 */
export function fullFuelKg(aircraft: LoadedAircraft): number {
  return tanksOf(aircraft).reduce((sum, tank) => sum + usableFuel(tank, tank.capacityL).massKg, 0);
}

/** Straight lines that approximate the parabolas of all tanks with a table, in total, and the max. for one tank. */
const CHORDS = { together: 144, each: 32 } as const;

/**
 * Returns contents in l, rising from unusable to full, between which the moment of a tank is taken as linear.
 *
 * A tank with one arm needs only its ends. With a table the arm is linear between its lines, so the moment is a
 * parabola there; a chord over 1/32 of a tank stays within a few hundredths of a millimetre of the aircraft's centre of
 * gravity.
 *
 * @source our own division; the bound of the error is in the comment
 */
export function fuelSteps(tank: FuelStation, tabledTanks: number): number[] {
  const { unusableL, capacityL, armByVolume } = tank;
  const span = Math.max(capacityL - unusableL, 0);
  const chords = armByVolume ? Math.min(CHORDS.each, Math.max(1, Math.floor(CHORDS.together ** (1 / tabledTanks)))) : 1;
  return Array.from({ length: chords + 1 }, (_, step) => unusableL + (span * step) / chords);
}
