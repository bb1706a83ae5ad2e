import { instantOf } from '../../units/calendar.ts';
import type { Visit } from '../../visit/visit.ts';
import { sunsetFor } from './daylight.ts';
import { planWork, type WorkPlan } from './schedule-work.ts';

export type DepartureRecord = NonNullable<Visit['departure']>;

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
const after = (moment: string, minutes: number): string =>
  new Date(instantOf(moment) + minutes * MINUTE_MS).toISOString().replace(/\.\d+Z$/, 'Z');
const minutesBetween = (from: string, to: string): number => (instantOf(to) - instantOf(from)) / MINUTE_MS;

/** Work left, earliest release, slack to the departure and daylight at the destination. */
export function releaseClock(visit: Visit, at: string): ReleaseClock {
  const plan = planWork(visit.worksheet ?? []);
  const readyAt = after(at, plan.totalMin);
  const { departure } = visit;
  if (!departure)
    return { plan, readyAt, slackMin: undefined, arrivalAt: undefined, sunsetAt: undefined, daylightMin: undefined };
  const takeOff = instantOf(departure.plannedAt) >= instantOf(readyAt) ? departure.plannedAt : readyAt;
  const arrivalAt = departure.tripMinutes === undefined ? undefined : after(takeOff, departure.tripMinutes);
  const sunset = departure.destination && arrivalAt ? sunsetFor(departure.destination, arrivalAt) : undefined;
  return {
    plan,
    readyAt,
    slackMin: minutesBetween(readyAt, departure.latestAt ?? departure.plannedAt),
    arrivalAt,
    sunsetAt: sunset?.at,
    daylightMin: sunset?.minutesLeft,
  };
}
