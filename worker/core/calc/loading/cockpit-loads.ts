import type { Aircraft, Station } from '../../record/visit.ts';
import { lastInside } from '../numbers/last-inside.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import type { CockpitLimit, CockpitLoad } from './class-loading-result.ts';
import type { Envelope } from './envelope.ts';
import { usableFuel } from './fuel.ts';
import { type LoadSpaceOptions, loadStationsOf, type Restriction } from './load-space.ts';
import { firstPilotInside, isPilotInside, MAX_TRIED_KG, type PilotSearch } from './pilot-search.ts';

/** Final resolution of the search, in kg. */
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
): Pick<CockpitLoad, 'minimum' | 'maximum'> {
  const pilot = loadStationsOf(aircraft).find(({ kind }) => kind === 'pilot');
  const isOver = aircraft.stations.some((station) => !isAtMost(state[station.id] ?? 0, maximumOn(station)));
  if (!pilot || isOver) return {};
  const [fromKg, toKg] = [pilot.minimumMassKg ?? 0, pilot.maximumMassKg];
  const search: PilotSearch = {
    aircraft,
    envelope,
    pilot: pilot.id,
    withPilot: (pilotKg) => ({ ...options, restriction: restrictionOf(aircraft, state, { [pilot.id]: pilotKg }) }),
  };
  const isInside = (pilotKg: number): boolean => isPilotInside(search, pilotKg);
  const found = firstPilotInside(search, fromKg, Math.min(toKg, Math.max(fromKg, MAX_TRIED_KG)));
  if (!found) return {};
  const { firstKg, beforeKg } = found;
  const lowest = firstKg === fromKg ? fromKg : lastInside(isInside, firstKg, beforeKg, CLOSE_KG);
  const highest = isInside(toKg) ? toKg : lastInside(isInside, lowest, toKg, CLOSE_KG);
  return {
    minimum: { kg: lowest, governedBy: lowest > fromKg ? 'envelope' : 'seat' },
    maximum: { kg: highest, governedBy: highest >= toKg ? 'seat' : whyMaximum(search, aircraft, highest) },
  };
}

function maximumOn(station: Station): number {
  return 'capacityL' in station ? usableFuel(station, station.capacityL).massKg : station.maximumMassKg;
}

/** A limit governs if a little more is allowed without it. */
function whyMaximum(search: PilotSearch, aircraft: Aircraft, kg: number): CockpitLimit['governedBy'] {
  const isMoreAllowed = (of: Aircraft): boolean => isPilotInside({ ...search, aircraft: of }, kg + 1e-3);
  if (aircraft.nonLifting && isMoreAllowed({ ...aircraft, nonLifting: undefined })) return 'non-lifting-mass';
  return isMoreAllowed({ ...aircraft, maximumMassKg: aircraft.maximumMassKg + 1 }) ? 'maximum-mass' : 'envelope';
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
