import type { LoadedAircraft } from '../../record/visit.ts';
import { isAtLeast } from '../numbers/limit-met.ts';
import type { Loading } from './boundary.ts';
import type { Envelope } from './envelope.ts';
import { areAllInside, loadingExtremes } from './extremes.ts';
import { type LoadSpaceOptions, loadSpaces } from './load-space.ts';
import { loadingOf } from './loading-of.ts';
import { worstMargins } from './margin.ts';
import { limitsOver } from './verdict.ts';

/** Step of the search in kg: our choice. */
const STEP_KG = 1;

/** Load spaces after which the step doubles, our choice: an aircraft with many tables and conditions must not take long. */
const MOST_SPACES = 5_000;

/** End of a search, our choice: far more than a seat takes, because a limit mistyped by thousands must not prolong it. */
export const MAX_TRIED_KG = 500;

/** Pilots of every mass on one seat of an aircraft. */
export interface PilotSearch {
  aircraft: LoadedAircraft;
  envelope: Envelope;
  /** Station of the pilot. */
  pilot: string;
  /** Returns what may be aboard with a pilot of one mass. */
  withPilot(pilotKg: number): LoadSpaceOptions;
}

/** Whether every permitted loading with a pilot of this mass is inside the envelope. */
export function isPilotInside({ aircraft, envelope, withPilot }: PilotSearch, pilotKg: number): boolean {
  return areAllInside(aircraft, withPilot(pilotKg), envelope);
}

/**
 * Returns the first pilot, in steps from the lightest, with whom every permitted loading is inside the envelope, and the
 * one tried before; both are the same if that is the lightest.
 *
 * One loading outside is enough to refuse a pilot, so the one found last is tried first: few steps need more.
 *
 * @returns undefined if none up to the heaviest is
 * @source our own search
 */
export function firstPilotInside(
  search: PilotSearch,
  lightestKg: number,
  heaviestKg: number,
): { firstKg: number; beforeKg: number } | undefined {
  const { aircraft, envelope, withPilot } = search;
  const isKnownOutside = outsideWith(search);
  const spaces = loadSpaces(aircraft, withPilot(lightestKg)).length;
  let [beforeKg, atKg, gone] = [lightestKg, lightestKg, 0];
  let known: Loading | undefined;
  for (;;) {
    if (!known || !isKnownOutside(known, atKg)) {
      const extremes = loadingExtremes(aircraft, withPilot(atKg), envelope);
      // Without any permitted loading the pilot is too light for the min. flying mass, or too heavy.
      const outside = extremes?.margins.filter(({ margin }) => !isAtLeast(margin, 0));
      if (outside?.length === 0) return { firstKg: atKg, beforeKg };
      known = outside?.sort((a, b) => a.margin - b.margin)[0]?.loading;
      gone += spaces;
    }
    if (atKg >= heaviestKg) return undefined;
    const stepKg = STEP_KG * 2 ** Math.floor(gone / MOST_SPACES);
    [beforeKg, atKg] = [atKg, Math.min(atKg + stepKg, heaviestKg)];
  }
}

/** Whether a loading is permitted and outside the envelope with another pilot. */
function outsideWith({
  aircraft,
  envelope,
  pilot,
  withPilot,
}: PilotSearch): (loading: Loading, pilotKg: number) => boolean {
  const over = limitsOver(aircraft);
  return ({ load }, pilotKg) => {
    const loading = loadingOf(aircraft, withPilot(pilotKg).empty, { ...load, [pilot]: pilotKg });
    return !over(loading) && worstMargins([loading], envelope).some(({ margin }) => !isAtLeast(margin, 0));
  };
}
