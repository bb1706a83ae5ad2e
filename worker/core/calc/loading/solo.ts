import type { LoadedAircraft } from '../../record/visit.ts';
import type { Envelope } from './envelope.ts';
import { areAllInside } from './extremes.ts';
import { type LoadSpaceOptions, loadStationsOf } from './load-space.ts';

/** Step of the first search, in kg, and final resolution of the result. */
const STEP_KG = 1;
const CLOSE_KG = 1e-6;

/** Start of the search: a result of exactly this means that the envelope requires no min. pilot. */
export const MIN_TRIED_KG = 30;

/** End of the search: no person is heavier, and a limit mistyped by thousands must not prolong it. */
const MAX_TRIED_KG = 500;

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
  const isInside = (pilotKg: number): boolean => {
    const restriction = { ...others, [pilot.id]: { minimumKg: pilotKg, maximumKg: pilotKg } };
    return areAllInside(aircraft, { ...options, restriction }, envelope);
  };
  const maxKg = Math.min(pilot.maximumMassKg, MAX_TRIED_KG);
  if (isInside(Math.min(MIN_TRIED_KG, maxKg))) return MIN_TRIED_KG;
  let [below, above] = [MIN_TRIED_KG, MIN_TRIED_KG];
  // The heaviest pilot that the seat takes is tried too, even for a remaining fraction of a step.
  while (above < maxKg && !isInside(above)) [below, above] = [above, Math.min(above + STEP_KG, maxKg)];
  if (!isInside(above)) return undefined;
  while (above - below > CLOSE_KG) {
    const middle = (above + below) / 2;
    if (isInside(middle)) above = middle;
    else below = middle;
  }
  return above;
}
