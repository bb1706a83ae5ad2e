import type { Aircraft, Station } from '../../record/visit.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import type { CockpitLimit, CockpitLoad } from './class-loading-result.ts';
import type { Envelope } from './envelope.ts';
import { areAllInside } from './extremes.ts';
import { usableFuel } from './fuel.ts';
import { type LoadSpaceOptions, loadStationsOf, type Restriction } from './load-space.ts';

/** Step of the search and final resolution, in kg. */
const STEP_KG = 1;
const CLOSE_KG = 1e-6;

/**
 * Returns the min. and max. mass of a pilot alone, for each state that the record names, or for the aircraft without one:
 * inside the envelope for every content of the tanks, and within every limit of mass.
 *
 * @source common practice, no source; the closed form agrees with it in tests/core/calc/loading/cockpit-loads.test.ts
 */
export function cockpitLoads(aircraft: Aircraft, options: LoadSpaceOptions, envelope: Envelope): CockpitLoad[] {
  const states = aircraft.cockpitStates ?? [{ name: '', loads: [] }];
  return states.map(({ name, loads }): CockpitLoad => {
    const state = Object.fromEntries(loads.map(({ station, massKg }) => [station, massKg]));
    return { state: name, ...rangeOf(aircraft, options, envelope, state) };
  });
}

function rangeOf(
  aircraft: Aircraft,
  options: LoadSpaceOptions,
  envelope: Envelope,
  state: Readonly<Record<string, number>>,
): Pick<CockpitLoad, 'least' | 'most'> {
  const pilot = loadStationsOf(aircraft).find(({ kind }) => kind === 'pilot');
  const isOver = aircraft.stations.some((station) => !isAtMost(state[station.id] ?? 0, mostOn(station)));
  if (!pilot || isOver) return {};
  const [fromKg, toKg] = [pilot.minimumMassKg ?? 0, pilot.maximumMassKg];
  const isAllowed = (of: Aircraft, pilotKg: number): boolean => {
    const restriction = restrictionOf(of, state, { [pilot.id]: pilotKg });
    return areAllInside(of, { ...options, restriction }, envelope);
  };
  let first = fromKg;
  while (first < toKg && !isAllowed(aircraft, first)) first = Math.min(first + STEP_KG, toKg);
  if (!isAllowed(aircraft, first)) return {};
  const lowest = first === fromKg ? fromKg : boundaryOf((kg) => isAllowed(aircraft, kg), first, first - STEP_KG);
  const highest = isAllowed(aircraft, toKg) ? toKg : boundaryOf((kg) => isAllowed(aircraft, kg), lowest, toKg);
  return {
    least: { kg: lowest, governedBy: lowest > fromKg ? 'envelope' : 'seat' },
    most: { kg: highest, governedBy: highest >= toKg ? 'seat' : whyMost(aircraft, isAllowed, highest) },
  };
}

function mostOn(station: Station): number {
  return 'capacityL' in station ? usableFuel(station, station.capacityL).massKg : station.maximumMassKg;
}

/** A limit governs if a little more is allowed without it. */
function whyMost(
  aircraft: Aircraft,
  isAllowed: (of: Aircraft, pilotKg: number) => boolean,
  kg: number,
): CockpitLimit['governedBy'] {
  const more = kg + 1e-3;
  if (aircraft.nonLifting && isAllowed({ ...aircraft, nonLifting: undefined }, more)) return 'non-lifting-mass';
  const heavier = { ...aircraft, maximumMassKg: aircraft.maximumMassKg + 1 };
  return isAllowed(heavier, more) ? 'maximum-mass' : 'envelope';
}

/** Every place is empty unless the state fills them; a tank that the state does not name may hold anything. */
function restrictionOf(
  aircraft: Aircraft,
  state: Readonly<Record<string, number>>,
  pilot: Readonly<Record<string, number>>,
): Restriction {
  const fixed: Record<string, number> = Object.fromEntries(loadStationsOf(aircraft).map(({ id }) => [id, 0]));
  return Object.fromEntries(
    Object.entries({ ...fixed, ...state, ...pilot }).map(([id, kg]) => [id, { minimumKg: kg, maximumKg: kg }]),
  );
}

function boundaryOf(isInside: (kg: number) => boolean, insideKg: number, outsideKg: number): number {
  let [inside, outside] = [insideKg, outsideKg];
  while (Math.abs(outside - inside) > CLOSE_KG) {
    const middle = (inside + outside) / 2;
    if (isInside(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}
