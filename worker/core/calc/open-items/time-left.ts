import type { Visit } from '../../record/visit.ts';
import { dateOf } from '../../units/calendar.ts';
import { compareCodeUnits } from '../../units/compare-code-units.ts';
import { forecastOf, type Left, leftUntil, NEVER, overdue } from '../lives/due.ts';
import { certificatesDue } from './certificates-due.ts';
import { hasLimit, type OpenItem } from './open-item.ts';
import type { OpenDue } from './open-item-result.ts';
import { countRead, hoursRead, type Readings } from './readings.ts';

export type { OpenDue } from './open-item-result.ts';

/** Without a stated use, hours sort among dates as if an aircraft flew much: too early rather than too late. Common practice, no source. */
const MUCH_USED_HOURS_PER_YEAR = 300;
/** Landings, launches, cycles or starts in an hour, for their place in the list. Common practice, no source. */
const MUCH_COUNTED_PER_HOUR = 4;

/**
 * Returns open items with the time left, the first due at the top: overdue before all else.
 *
 * @param readings hours and landings of the aircraft
 * @param at reference time
 * @source common practice, no source
 */
export function timeLeft(items: readonly OpenItem[], readings: Readings, at: string): OpenDue[] {
  const today = dateOf(at);
  const { hoursPerYear = MUCH_USED_HOURS_PER_YEAR } = readings;
  const comes = (due: OpenDue): string =>
    forecastOf(today, { ...due, left: due as Left }, hoursPerYear, hoursPerYear * MUCH_COUNTED_PER_HOUR) ?? NEVER;
  return items
    .map((item) => leftOf(item, readings, today))
    .sort(
      (a, b) =>
        Number(b.isOverdue) - Number(a.isOverdue) ||
        compareCodeUnits(comes(a), comes(b)) ||
        compareCodeUnits(a.item ?? a.id, b.item ?? b.id),
    );
}

function leftOf(item: OpenItem, readings: Readings, today: string): OpenDue {
  const { until, dueAfter } = item;
  const left = leftUntil(until, today, {
    hours: hoursRead(readings, item),
    count: (counts) => countRead(readings, counts, item),
  });
  const forecast = forecastOf(today, { until, left, dueAfter }, readings.hoursPerYear);
  const known = Object.entries({ ...left, forecastDate: forecast }).filter(([, value]) => value !== undefined);
  return { ...item, ...Object.fromEntries(known), ...overdue(item, today, left, until.date) };
}

/**
 * Returns the one list of what is due: maintenance items, recurring and open bulletins, deferrals, and monitored findings
 * that have a limit, certificates; the first due at the top.
 *
 * @param visit visit with the certificates of the aircraft
 * @param readings hours and counts of the aircraft
 * @param at reference time
 */
export function dueItems(
  open: readonly OpenItem[],
  visit: Pick<Visit, 'certificates'>,
  readings: Readings,
  at: string,
): OpenDue[] {
  return timeLeft(
    [...open, ...certificatesDue(visit)].filter(
      (item) =>
        item.kind === 'due' ||
        item.kind === 'bulletin' ||
        item.kind === 'deferral' ||
        item.kind === 'certificate' ||
        (item.kind === 'watch' && hasLimit(item)),
    ),
    readings,
    at,
  );
}
