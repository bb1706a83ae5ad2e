import type { Count, NumberClock } from '../../record/counts.ts';
import type { Aircraft, Visit } from '../../record/visit.ts';
import { addMonths, DAY_MS, dateOf, daysBetween, endOfMonth, utcTimestamp } from '../../units/calendar.ts';
import { compareCodeUnits } from '../../units/compare-code-units.ts';
import { isAtLeast } from '../numbers/limit-met.ts';
import type { OtherCounts } from '../open-items/open-item-result.ts';
import { countNow } from './counting.ts';
import type { Due } from './due-result.ts';
import { clocksOf, type LifeClocks } from './product-time.ts';
import { hoursOf, totalHours } from './total-hours.ts';

export type { Due } from './due-result.ts';

export type LivesRecord = NonNullable<Visit['lives']>;
export type Life = LivesRecord['items'][number];

/** Parts of a visit with its clocks: its meters, and the products that have a time of their fitting. */
export type Clocked = Pick<Visit, 'meters'> & { aircraft?: Aircraft | undefined };

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
export function dueList(visit: Clocked, record: LivesRecord, at: string): Due[] {
  const today = dateOf(at);
  return record.items
    .map((life) => dueOf(visit, life, today, record.hoursPerYear))
    .sort((a, b) => compareCodeUnits(a.forecastDate ?? NEVER, b.forecastDate ?? NEVER) || compareCodeUnits(a.id, b.id));
}

function dueOf(visit: Clocked, life: Life, today: string, hoursPerYear: number | undefined): Due {
  const { interval, lastDone, wasDueAt, dueAfter } = life;
  const clocks = clocksOf(visit, life);
  const from = countedFrom(lastDone, wasDueAt);
  const dueDate = dateDue(from.date, interval);
  /** Total at which it is due: the time of its product, if it counts in that, is moved to the meter. */
  const dueAt = (clock: NumberClock): number | undefined => {
    const [start, every] = [from[clock], interval[clock]];
    return start === undefined || every === undefined ? undefined : start + every + clocks.shift(clock);
  };
  const [dueHours, dueLandings] = [dueAt('hours'), dueAt('landings')];
  const counterOf = (counts: Count) => clocks.counting.find((each) => each.counts === counts);
  const until = { date: dueDate, hours: dueHours, landings: dueLandings, ...eachCount(dueAt) };
  const stated = Object.values(until).filter((limit) => limit !== undefined).length;
  const left = leftUntil(until, today, {
    hours: hoursNowOf(visit, clocks),
    count: (counts) => countNow(visit, counterOf(counts)),
  });
  return {
    id: life.id,
    item: life.item,
    basis: life.basis,
    dueDate,
    dueHours,
    of: clocks.named.of,
    meter: clocks.named.meter,
    dueLandings,
    dueCounts: eachCount(dueAt),
    counters: clocks.counting.some(({ id }) => id !== undefined) ? clocks.counting : undefined,
    // Of one clock, the first is all.
    dueAfter: dueAfter === 'all' && stated > 1 ? dueAfter : undefined,
    ...left,
    forecastDate: forecastOf(today, { until, left, dueAfter }, hoursPerYear),
    ...overdue({ ...life, toEndOfMonth: interval.toEndOfMonth }, today, left, dueDate),
  };
}

const OTHERS = ['launches', 'cycles', 'starts'] as const;

/** Returns the launches, cycles and starts that have a value; undefined if none has. */
function eachCount(of: (counts: Count) => number | undefined): OtherCounts | undefined {
  const counted = OTHERS.flatMap((counts) => {
    const value = of(counts);
    return value === undefined ? [] : [[counts, value] as const];
  });
  return counted.length === 0 ? undefined : Object.fromEntries(counted);
}

/** Present totals of the clocks of an item. */
interface Now {
  hours: number | undefined;
  count(counts: Count): number | undefined;
}

/** Returns the remainder until a limit on each clock. */
export function leftUntil(
  until: Partial<Record<'date', string | undefined> & Record<NumberClock, number | undefined>>,
  today: string,
  now: Now,
): Left {
  const rest = (limit: number | undefined, total: number | undefined): number | undefined =>
    limit === undefined || total === undefined ? undefined : limit - total;
  return {
    daysLeft: until.date === undefined ? undefined : daysBetween(today, until.date),
    hoursLeft: rest(until.hours, now.hours),
    landingsLeft: rest(until.landings, now.count('landings')),
    countsLeft: eachCount((counts) => rest(until[counts], now.count(counts))),
  };
}

/**
 * Returns the start of the next interval on each clock: the time of the work, or the previous due point if that was
 * earlier. Early work so never stretches an interval, and late work never moves the ones that follow.
 */
function countedFrom(lastDone: Life['lastDone'], wasDueAt: Life['wasDueAt'] = {}): Life['lastDone'] {
  const starts = Object.entries(lastDone).map(([clock, done]) => {
    const due = wasDueAt[clock as keyof typeof lastDone];
    return [clock, due !== undefined && done !== undefined && due < done ? due : done];
  });
  return Object.fromEntries(starts);
}

/** Returns the total hours at release by the meter of an item; without a name, by the first of its product. */
function hoursNowOf(visit: Clocked, { named }: LifeClocks): number | undefined {
  if (named.meter === undefined) return hoursOf(visit, named.of);
  const found = visit.meters?.readings.find(({ id }) => id === named.meter);
  return found && totalHours(found);
}

/** Returns the earlier of the fixed date and the end of the calendar interval. */
function dateDue(from: string | undefined, { months, date, toEndOfMonth }: Life['interval']): string | undefined {
  if (from === undefined || months === undefined) return date;
  const end = addMonths(from, months);
  const due = toEndOfMonth ? endOfMonth(end) : end;
  return date !== undefined && date < due ? date : due;
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

/** Limits of an item, the remainder on each, and whether all have to expire. */
interface Counted {
  until: { date?: string | undefined };
  left: Left;
  dueAfter?: Life['dueAfter'];
}

/**
 * Returns the date on which an item is expected to come due: the earliest by its clocks, or the latest if all of them
 * have to expire.
 *
 * @param countsPerYear use a year in landings, launches, cycles or starts; without it they give no date
 * @returns undefined if no clock gives a date, or if all have to expire and one gives none
 * @source common practice, no source
 */
export function forecastOf(
  today: string,
  { until, left, dueAfter }: Counted,
  hoursPerYear: number | undefined,
  countsPerYear?: number,
): string | undefined {
  const counts = [left.landingsLeft, ...Object.values(left.countsLeft ?? {})].filter((rest) => rest !== undefined);
  const dates = [
    ...(until.date === undefined ? [] : [until.date]),
    ...(left.hoursLeft === undefined ? [] : [forecastDate(today, undefined, left.hoursLeft, hoursPerYear)]),
    ...counts.map((rest) => forecastDate(today, undefined, rest, countsPerYear)),
  ];
  const known = dates.filter((date) => date !== undefined).sort();
  if (dueAfter !== 'all') return known[0];
  return known.length === dates.length ? known.at(-1) : undefined;
}

function daysLater(date: string, days: number): string {
  const moved = Date.parse(`${date}T00:00:00Z`) + Math.floor(Math.min(Math.max(days, -1e5), 1e5)) * DAY_MS;
  return dateOf(utcTimestamp(moved));
}

export type Left = Pick<Due, 'daysLeft' | 'hoursLeft' | 'landingsLeft' | 'countsLeft'>;

/** Tolerance of an item; `toEndOfMonth` as of its interval. */
type Tolerance = Pick<Life, 'toleranceMonths' | 'toleranceHours' | 'dueAfter'> & Pick<Life['interval'], 'toEndOfMonth'>;

/**
 * Returns whether an item is past its limit, and whether its tolerance still allows that: by the first of its clocks, or
 * by all of them. A clock that nobody read does not keep an item from being overdue.
 */
export function overdue(
  life: Tolerance,
  today: string,
  left: Left,
  dueDate: string | undefined,
): Pick<Due, 'isOverdue' | 'isWithinTolerance'> {
  const { daysLeft, hoursLeft, landingsLeft, countsLeft = {} } = left;
  const clocks = [
    { rest: daysLeft, isTolerated: !dueDate || latestDate(dueDate, life) >= today },
    { rest: hoursLeft, isTolerated: hoursLeft !== undefined && isAtLeast(hoursLeft, -(life.toleranceHours ?? 0)) },
    ...[landingsLeft, ...Object.values(countsLeft)].map((rest) => ({ rest, isTolerated: (rest ?? 0) >= 0 })),
  ].filter(({ rest }) => rest !== undefined);
  const isPast = ({ rest = 0 }: (typeof clocks)[number]): boolean => !isAtLeast(rest, 0);
  const isTolerated = (clock: (typeof clocks)[number]): boolean => clock.isTolerated;
  const waitsForAll = life.dueAfter === 'all';
  const isOverdue = waitsForAll ? clocks.length > 0 && clocks.every(isPast) : clocks.some(isPast);
  return {
    isOverdue,
    isWithinTolerance: isOverdue && (waitsForAll ? clocks.some(isTolerated) : clocks.every(isTolerated)),
  };
}

/** Returns the end of a tolerance: counted from the end of a month, it is the end of a month too. */
function latestDate(dueDate: string, { toleranceMonths = 0, toEndOfMonth = false }: Tolerance): string {
  const latest = addMonths(dueDate, toleranceMonths);
  return toEndOfMonth && dueDate === endOfMonth(dueDate) ? endOfMonth(latest) : latest;
}
