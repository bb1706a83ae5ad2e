import { dateOf, daysBetween } from '../../units/calendar.ts';
import { compareCodeUnits } from '../../units/compare-code-units.ts';
import { forecastDate, NEVER, overdue } from '../lives/due.ts';
import type { OpenItem } from './open-item.ts';
import { hoursRead, type Readings } from './readings.ts';

/** An open item with the remainder until its limit; negative if overdue. */
export interface OpenDue extends OpenItem {
  daysLeft?: number;
  hoursLeft?: number;
  landingsLeft?: number;
  /** Date on which it is expected to come due; left out without a limit or if the use is not known. */
  forecastDate?: string;
  isOverdue: boolean;
  isWithinTolerance: boolean;
}

/** Without a stated use, hours sort among dates as if an aircraft flew much: too early rather than too late. Common practice, no source. */
const MUCH_USED_HOURS_PER_YEAR = 300;

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
  const comes = ({ until, hoursLeft }: OpenDue): string =>
    forecastDate(today, until.date, hoursLeft, hoursPerYear) ?? NEVER;
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
  const { date, hours, landings } = item.until;
  const hoursNow = hoursRead(readings, item);
  const daysLeft = date === undefined ? undefined : daysBetween(today, date);
  const hoursLeft = hours === undefined || hoursNow === undefined ? undefined : hours - hoursNow;
  const landingsNow = readings.landings?.count;
  const landingsLeft = landings === undefined || landingsNow === undefined ? undefined : landings - landingsNow;
  const forecast = forecastDate(today, date, hoursLeft, readings.hoursPerYear);
  return {
    ...item,
    ...(daysLeft !== undefined && { daysLeft }),
    ...(hoursLeft !== undefined && { hoursLeft }),
    ...(landingsLeft !== undefined && { landingsLeft }),
    ...(forecast !== undefined && { forecastDate: forecast }),
    ...overdue(item, today, { daysLeft, hoursLeft, landingsLeft }, date),
  };
}
