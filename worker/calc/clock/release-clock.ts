import { instantOf, momentLike } from '../../units/calendar.ts';
import type { Visit } from '../../visit/visit.ts';
import { sunsetFor } from './daylight.ts';
import { planWork, type WorkPlan } from './schedule-work.ts';

/** When the aircraft can be released, and what that leaves before the departure. */
export interface ReleaseClock {
  plan: WorkPlan;
  /** The moment of the assessment and what is left of the work. */
  readyAt: string;
  /** Minutes between being ready and the latest take-off; negative when too late. Undefined without a departure. */
  slackMin: number | undefined;
  arrivalAt: string | undefined;
  sunsetAt: string | undefined;
  /** Minutes between arrival and sunset at the destination. */
  daylightMin: number | undefined;
}

const MINUTE_MS = 60_000;

/**
 * Work left, earliest release, slack to the departure and daylight at the destination; moments in the workshop's local time.
 *
 * @source common practice, no source
 */
export function releaseClock(visit: Visit, at: string): ReleaseClock {
  const plan = planWork(visit.worksheet ?? []);
  const local = (instantMs: number): string => momentLike(visit.visit.arrivedAt, instantMs);
  const readyMs = instantOf(at) + plan.totalMin * MINUTE_MS;
  const readyAt = local(readyMs);
  const { departure } = visit;
  if (!departure)
    return { plan, readyAt, slackMin: undefined, arrivalAt: undefined, sunsetAt: undefined, daylightMin: undefined };
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
  };
}
