import { localZone } from '../../record/local-zone.ts';
import type { Visit } from '../../record/visit.ts';
import { instantOf, timestampLike } from '../../units/calendar.ts';
import type { Place } from '../compass/place.ts';
import { isAtLeast } from '../numbers/limit-met.ts';
import type { ReleaseClock } from './clock-result.ts';
import { isDark, type Sunset, sunsetFor } from './daylight.ts';
import { planWork } from './schedule-work.ts';

export type { ReleaseClock } from './clock-result.ts';

const MINUTE_MS = 60_000;

/** Near the horizon the sunset search is more accurate; without a sunset the altitude of the sun decides. */
function lightAt(place: Place | undefined, at: string | undefined, sunset: Sunset | undefined): boolean | undefined {
  if (!place || !at) return undefined;
  return sunset ? !isAtLeast(sunset.minutesLeft, 0) : isDark(place, at);
}

/**
 * Returns remaining work, earliest release, slack to the departure and daylight at the destination; timestamps in the
 * workshop's local time.
 *
 * @source common practice, no source
 */
export function releaseClock(visit: Pick<Visit, 'worksheet' | 'departure' | 'visit'>, at: string): ReleaseClock {
  const plan = planWork(visit.worksheet ?? []);
  const local = (instantMs: number): string => timestampLike(localZone(visit), instantMs);
  const readyMs = instantOf(at) + plan.totalMin * MINUTE_MS;
  const readyAt = local(readyMs);
  const { departure } = visit;
  if (!departure)
    return {
      plan,
      readyAt,
      slackMin: undefined,
      arrivalAt: undefined,
      sunsetAt: undefined,
      daylightMin: undefined,
      isDarkAtArrival: undefined,
    };
  const takeOffMs = Math.max(instantOf(departure.plannedAt), readyMs);
  const arrivalMs = departure.tripMinutes === undefined ? undefined : takeOffMs + departure.tripMinutes * MINUTE_MS;
  const arrivalAt = arrivalMs === undefined ? undefined : local(arrivalMs);
  const sunset = departure.destination && arrivalAt ? sunsetFor(departure.destination, arrivalAt) : undefined;
  return {
    plan,
    readyAt,
    slackMin: (instantOf(departure.latestAt ?? departure.plannedAt) - readyMs) / MINUTE_MS,
    arrivalAt,
    sunsetAt: sunset && local(instantOf(sunset.at)),
    daylightMin: sunset?.minutesLeft,
    isDarkAtArrival: lightAt(departure.destination, arrivalAt, sunset),
  };
}
