import type { Visit } from '../../record/visit.ts';
import { addMonths, DAY_MS, dateOf, daysBetween, endOfMonth, utcTimestamp } from '../../units/calendar.ts';
import { compareCodeUnits } from '../../units/compare-code-units.ts';
import { isAtLeast } from '../numbers/limit-met.ts';
import type { Due } from './due-result.ts';
import { hoursOf, totalHours } from './total-hours.ts';

export type { Due } from './due-result.ts';

export type LivesRecord = NonNullable<Visit['lives']>;
export type Life = LivesRecord['items'][number];

const DAYS_PER_YEAR = 365.25;
/** Sorts after every date. */
export const NEVER = '9999-12-31';

/**
 * Returns the due list, the first due at the top.
 *
 * An interval is counted from the previous due point, if the record has one and it was earlier than the work: a used
 * tolerance is then not added to the next interval.
 *
 * @param at time of the assessment
 * @source calendar months: 14 CFR 91.411, 91.413 and 91.409(a), read; excess counted toward the next interval: 14 CFR
 * 91.409(b), read
 */
export function dueList(visit: Pick<Visit, 'meters'>, record: LivesRecord, at: string): Due[] {
  const today = dateOf(at);
  return record.items
    .map((life) => dueOf(visit, life, today, record.hoursPerYear))
    .sort((a, b) => compareCodeUnits(a.forecastDate ?? NEVER, b.forecastDate ?? NEVER) || compareCodeUnits(a.id, b.id));
}

function dueOf(visit: Pick<Visit, 'meters'>, life: Life, today: string, hoursPerYear: number | undefined): Due {
  const { interval, lastDone, wasDueAt } = life;
  const from = countedFrom(lastDone, wasDueAt);
  const hoursNow = hoursNowOf(visit, life);
  const dueDate =
    from.date !== undefined && interval.months !== undefined ? calendarDue(from.date, interval) : undefined;
  const dueHours = from.hours !== undefined && interval.hours !== undefined ? from.hours + interval.hours : undefined;
  const dueLandings =
    from.landings !== undefined && interval.landings !== undefined ? from.landings + interval.landings : undefined;
  const daysLeft = dueDate === undefined ? undefined : daysBetween(today, dueDate);
  const hoursLeft = dueHours !== undefined && hoursNow !== undefined ? dueHours - hoursNow : undefined;
  const landingsLeft =
    dueLandings !== undefined && visit.meters?.landings !== undefined ? dueLandings - visit.meters.landings : undefined;
  const left = { daysLeft, hoursLeft, landingsLeft };
  return {
    id: life.id,
    item: life.item,
    basis: life.basis,
    dueDate,
    dueHours,
    meter: life.meter,
    dueLandings,
    ...left,
    forecastDate: forecastDate(today, dueDate, hoursLeft, hoursPerYear),
    ...overdue({ ...life, toEndOfMonth: interval.toEndOfMonth }, today, left, dueDate),
  };
}

/**
 * Returns the start of the next interval on each clock: the time of the work, or the previous due point if that was
 * earlier. Early work so never stretches an interval, and late work never moves the ones that follow.
 */
function countedFrom(lastDone: Life['lastDone'], wasDueAt: Life['wasDueAt']): Life['lastDone'] {
  const earlier = <Value extends number | string>(done?: Value, due?: Value): Value | undefined =>
    done !== undefined && due !== undefined && due < done ? due : done;
  return {
    date: earlier(lastDone.date, wasDueAt?.date),
    hours: earlier(lastDone.hours, wasDueAt?.hours),
    landings: earlier(lastDone.landings, wasDueAt?.landings),
  };
}

/** Returns the total hours at release by the meter of an item; without a name, by the airframe's. */
function hoursNowOf(visit: Pick<Visit, 'meters'>, { meter }: Life): number | undefined {
  if (meter === undefined) return hoursOf(visit, 'airframe');
  const found = visit.meters?.readings.find(({ id }) => id === meter);
  return found && totalHours(found);
}

function calendarDue(date: string, { months = 0, toEndOfMonth }: Life['interval']): string {
  const due = addMonths(date, months);
  return toEndOfMonth ? endOfMonth(due) : due;
}

/**
 * Returns the date on which an item is expected to come due: the earlier of its date and the date by the hours left at
 * the stated use.
 *
 * @returns undefined without a date, and without hours left or use
 * @source common practice, no source; a year has 365.25 days
 */
export function forecastDate(
  today: string,
  dueDate: string | undefined,
  hoursLeft: number | undefined,
  hoursPerYear = 0,
): string | undefined {
  const byHours =
    hoursLeft === undefined || !(hoursPerYear > 0)
      ? undefined
      : daysLater(today, (hoursLeft / hoursPerYear) * DAYS_PER_YEAR);
  const dates = [dueDate, byHours].filter((date) => date !== undefined).sort();
  return dates[0];
}

function daysLater(date: string, days: number): string {
  const moved = Date.parse(`${date}T00:00:00Z`) + Math.floor(Math.min(Math.max(days, -1e5), 1e5)) * DAY_MS;
  return dateOf(utcTimestamp(moved));
}

type Left = Pick<Due, 'daysLeft' | 'hoursLeft' | 'landingsLeft'>;

/** Tolerance of an item; `toEndOfMonth` as of its interval. */
type Tolerance = Pick<Life, 'toleranceMonths' | 'toleranceHours'> & Pick<Life['interval'], 'toEndOfMonth'>;

/** Returns whether an item is past its limit, and whether its tolerance still allows that. */
export function overdue(
  life: Tolerance,
  today: string,
  left: Left,
  dueDate: string | undefined,
): Pick<Due, 'isOverdue' | 'isWithinTolerance'> {
  const isOverdue = [left.daysLeft, left.hoursLeft, left.landingsLeft].some(
    (rest) => rest !== undefined && !isAtLeast(rest, 0),
  );
  const latest = dueDate && latestDate(dueDate, life);
  const isDateTolerated = !latest || latest >= today;
  const areHoursTolerated = left.hoursLeft === undefined || isAtLeast(left.hoursLeft, -(life.toleranceHours ?? 0));
  const areLandingsTolerated = left.landingsLeft === undefined || left.landingsLeft >= 0;
  return { isOverdue, isWithinTolerance: isOverdue && isDateTolerated && areHoursTolerated && areLandingsTolerated };
}

/** Returns the end of a tolerance: counted from the end of a month, it is the end of a month too. */
function latestDate(dueDate: string, { toleranceMonths = 0, toEndOfMonth = false }: Tolerance): string {
  const latest = addMonths(dueDate, toleranceMonths);
  return toEndOfMonth && dueDate === endOfMonth(dueDate) ? endOfMonth(latest) : latest;
}
