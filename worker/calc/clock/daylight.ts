import { Body, Observer, SearchRiseSet } from 'astronomy-engine';
import type { Place } from '../place.ts';

const [RISE, SET] = [1, -1] as const;

/** The sunset that a moment is to be held against. */
export interface Sunset {
  /** UTC, to the second. */
  at: string;
  /** Minutes from the moment to the sunset; negative in the night that follows it. */
  minutesLeft: number;
}

/**
 * The sunset that ends the day of a moment at a place, or that began its night; undefined where the sun neither rises nor
 * sets within a day.
 *
 * @source upper limb at the horizon with usual refraction, astronomy-engine 2.1
 */
export function sunsetFor({ latitudeDeg, longitudeDeg, elevationM = 0 }: Place, moment: string): Sunset | undefined {
  const observer = new Observer(latitudeDeg, longitudeDeg, elevationM);
  const from = new Date(moment);
  const search = (direction: number, days: number): number | undefined =>
    SearchRiseSet(Body.Sun, observer, direction, from, days)?.date.getTime();
  const set = search(SET, 1);
  const rise = search(RISE, 1);
  const isNight = rise !== undefined && (set === undefined || rise < set);
  const found = isNight ? search(SET, -1) : set;
  if (found === undefined) return undefined;
  return { at: `${new Date(found).toISOString().slice(0, 19)}Z`, minutesLeft: (found - from.getTime()) / 60_000 };
}
