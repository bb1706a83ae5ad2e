import type { LoadedAircraft } from '../../record/visit.ts';
import { lastInside } from '../numbers/last-inside.ts';
import type { Envelope } from './envelope.ts';
import { type LoadSpaceOptions, loadStationsOf } from './load-space.ts';
import { firstPilotInside, isPilotInside, MAX_TRIED_KG } from './pilot-search.ts';

/** Final resolution of the result. */
const CLOSE_KG = 1e-6;

/** Start of the search: a result of exactly this means that the envelope requires no min. pilot. */
export const MIN_TRIED_KG = 30;

/**
 * Returns the min. mass of a pilot who may fly alone, without baggage, at every fuel content: in kg.
 *
 * @returns undefined if no pilot up to the seat's maximum may, or without a pilot's station
 * @source common practice, no source; the search is our own
 */
export function minimumSoloKg(
  aircraft: LoadedAircraft,
  options: LoadSpaceOptions,
  envelope: Envelope,
): number | undefined {
  const seats = loadStationsOf(aircraft);
  const pilot = seats.find(({ kind }) => kind === 'pilot');
  if (!pilot) return undefined;
  const others = Object.fromEntries(
    seats.filter(({ id }) => id !== pilot.id).map(({ id }) => [id, { minimumKg: 0, maximumKg: 0 }]),
  );
  const withPilot = (pilotKg: number): LoadSpaceOptions => ({
    ...options,
    restriction: { ...others, [pilot.id]: { minimumKg: pilotKg, maximumKg: pilotKg } },
  });
  const search = { aircraft, envelope, pilot: pilot.id, withPilot };
  // The heaviest pilot that the seat takes is tried too, even for a remaining fraction of a step.
  const maxKg = Math.min(pilot.maximumMassKg, MAX_TRIED_KG);
  const lightestKg = Math.min(MIN_TRIED_KG, maxKg);
  const found = firstPilotInside(search, lightestKg, maxKg);
  if (!found) return undefined;
  if (found.firstKg === lightestKg) return MIN_TRIED_KG;
  return lastInside((pilotKg) => isPilotInside(search, pilotKg), found.firstKg, found.beforeKg, CLOSE_KG);
}
