import { Body, Equator, Horizon, Observer, SearchRiseSet } from 'astronomy-engine';
import { utcTimestamp } from '../../units/calendar.ts';
import type { Place } from '../compass/place.ts';

// Sunset is calculated by astronomy-engine, which is pure and is compared with published tables in tests.

const [RISE, SET] = [1, -1] as const;

/** Sunset next to a time. */
export interface Sunset {
  /** UTC, to the second. */
  at: string;
  /** Minutes from the time to the sunset; negative in the night after it. */
  minutesLeft: number;
}

/**
 * Returns the sunset that ends the day of a timestamp at a place, or that began its night. That may be missing for the
 * polar day or the polar night: `isDark` distinguishes them.
 *
 * @returns undefined if the sun neither rises nor sets within a day
 * @source upper limb at the horizon with usual refraction, astronomy-engine 2.1
 */
export function sunsetFor(place: Place, moment: string): Sunset | undefined {
  const { latitudeDeg, longitudeDeg, elevationM = 0 } = place;
  const observer = new Observer(latitudeDeg, longitudeDeg, elevationM);
  const from = new Date(moment);
  const search = (direction: number, days: number): number | undefined =>
    SearchRiseSet(Body.Sun, observer, direction, from, days)?.date.getTime();
  const set = search(SET, 1);
  const rise = search(RISE, 1);
  const isNight = rise === undefined ? set === undefined && isDark(place, moment) : set === undefined || rise < set;
  const found = isNight ? search(SET, -1) : set;
  if (found === undefined) return undefined;
  return { at: `${utcTimestamp(found).slice(0, 19)}Z`, minutesLeft: (found - from.getTime()) / 60_000 };
}

/** Altitude of the sun's centre with its upper limb on the horizon: 34′ of refraction and 16′ of its radius. */
const HORIZON_DEG = -50 / 60;

/**
 * Whether the sun is below the horizon at a time.
 *
 * @source upper limb at the horizon with usual refraction, as sunsetFor(); altitude by astronomy-engine 2.1
 */
export function isDark({ latitudeDeg, longitudeDeg, elevationM = 0 }: Place, moment: string): boolean {
  const observer = new Observer(latitudeDeg, longitudeDeg, elevationM);
  const at = new Date(moment);
  const { ra, dec } = Equator(Body.Sun, at, observer, true, true);
  return Horizon(at, observer, ra, dec).altitude < HORIZON_DEG;
}
