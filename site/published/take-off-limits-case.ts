import { checkLoading, type LoadingCheck } from '../../worker/core/calc/loading/check.ts';
import type { Aircraft } from '../../worker/core/record/visit.ts';
import { readVisit } from './read-visit.ts';

interface TakeOffInput {
  maximumTakeOff?: number;
  maximumLanding?: number;
  maximumZeroFuel?: number;
  dryOperating: number;
  /** Left out if the case calculates it. */
  load?: number;
  /** Before taxiing; left out if the case calculates it. */
  rampFuel?: number;
  taxi?: number;
  burn?: number;
}

/** More than any mass of a case. */
const PLENTY = 1e7;

function aircraftOf({ maximumTakeOff = PLENTY, maximumLanding, maximumZeroFuel }: TakeOffInput): Aircraft {
  return {
    ...readVisit('computed-only').aircraft,
    maximumMassKg: maximumTakeOff,
    ...(maximumLanding !== undefined && { maximumLandingMassKg: maximumLanding }),
    ...(maximumZeroFuel !== undefined && { maximumZeroFuelMassKg: maximumZeroFuel }),
    stations: [
      // All that is not fuel, on the station of the pilot: the masses alone decide.
      { id: 'load', name: 'Load', kind: 'pilot', armMm: 0, maximumMassKg: PLENTY },
      { id: 'fuel', name: 'Fuel', kind: 'fuel', armMm: 0, capacityL: PLENTY, unusableL: 0, densityKgPerL: 1 },
    ],
  };
}

/** The largest mass up to a multitude that is inside; the smallest must be. */
function largest(fromKg: number, isInside: (massKg: number) => boolean): number {
  let [inside, outside] = [fromKg, PLENTY / 10];
  while (outside - inside > 1e-6) {
    const middle = (inside + outside) / 2;
    if (isInside(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}

/**
 * The largest load, or the largest fuel, that `checkLoading()` finds inside the limits of take-off, zero fuel and
 * landing, and which of them it then meets: 1 for that one. In one unit of mass.
 */
export function takeOffLimitsCase(input: TakeOffInput): Record<string, number> {
  const { dryOperating, taxi = 0, burn = 0 } = input;
  const aircraft = aircraftOf(input);
  const check = (load: number, fuel: number): LoadingCheck =>
    checkLoading(
      aircraft,
      { massKg: dryOperating, momentKgMm: 0 },
      { load: { load, fuel }, burnKg: burn, stepsKg: { load: PLENTY, fuel: PLENTY } },
    );
  const isInside = (load: number, fuel: number): boolean => check(load, fuel).verdict.state === 'inside';
  const statedFuel = input.rampFuel === undefined ? undefined : input.rampFuel - taxi;
  const load = input.load ?? largest(1e-6, (mass) => isInside(mass, statedFuel ?? Number.NaN));
  const fuel = statedFuel ?? largest(burn + 1, (mass) => isInside(load, mass));
  const { takeOff, landing } = check(load, fuel);
  const over = check(load + (input.load === undefined ? 1 : 0), fuel + (statedFuel === undefined ? 1 : 0)).verdict;
  const exceeded = over.state === 'limit-exceeded' ? over.exceeded.kind : over.state;
  return {
    load,
    rampFuel: fuel + taxi,
    takeOff: takeOff.massKg,
    landing: landing?.massKg ?? Number.NaN,
    isByTakeOff: Number(exceeded === 'too-heavy'),
    isByZeroFuel: Number(exceeded === 'zero-fuel-mass'),
    isByLanding: Number(exceeded === 'landing-mass'),
  };
}
