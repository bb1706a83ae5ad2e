import { addMonths, dateOf, daysBetween } from '../../units/calendar.ts';
import { byText } from '../../units/order.ts';
import type { Visit } from '../../visit/visit.ts';
import { isAtLeast } from '../limit-met.ts';
import { forecastDate } from '../lives/due.ts';
import { hoursOf, totalHours } from '../total-hours.ts';
import type { OpenItem } from './open-item.ts';

/** An open item with what is left until its limit; negative when it is overdue. */
export interface OpenDue extends OpenItem {
  daysLeft?: number;
  hoursLeft?: number;
  landingsLeft?: number;
  /** The day on which it is expected to come due; left out where it has no limit or the use is not known. */
  forecastDate?: string;
  isOverdue: boolean;
  isWithinTolerance: boolean;
}

/** Sorts after every date. */
const NEVER = '9999-12-31';

/**
 * What stands open with the time left, what comes first at the top.
 *
 * @param visit the newest one: its meters say how far the aircraft has flown
 * @param at the moment that it is looked at from
 * @source common practice, no source
 */
export function timeLeft(items: readonly OpenItem[], visit: Visit, at: string): OpenDue[] {
  const today = dateOf(at);
  return items
    .map((item) => leftOf(item, visit, today))
    .sort((a, b) => byText(a.forecastDate ?? NEVER, b.forecastDate ?? NEVER) || byText(a.item ?? a.id, b.item ?? b.id));
}

function leftOf(item: OpenItem, visit: Visit, today: string): OpenDue {
  const { date, hours, landings } = item.until;
  const hoursNow = hoursNowOf(item, visit);
  const daysLeft = date === undefined ? undefined : daysBetween(today, date);
  const hoursLeft = hours === undefined || hoursNow === undefined ? undefined : hours - hoursNow;
  const landingsNow = visit.meters?.landings;
  const landingsLeft = landings === undefined || landingsNow === undefined ? undefined : landings - landingsNow;
  const forecast = forecastDate(today, date, hoursLeft, visit.lives?.hoursPerYear);
  const isOverdue = [daysLeft, hoursLeft, landingsLeft].some((left) => left !== undefined && !isAtLeast(left, 0));
  return {
    ...item,
    ...(daysLeft !== undefined && { daysLeft }),
    ...(hoursLeft !== undefined && { hoursLeft }),
    ...(landingsLeft !== undefined && { landingsLeft }),
    ...(forecast !== undefined && { forecastDate: forecast }),
    isOverdue,
    isWithinTolerance: isOverdue && isTolerated(item, { today, hoursLeft, landingsLeft }),
  };
}

function isTolerated(
  { until, toleranceHours = 0, toleranceMonths = 0 }: OpenItem,
  {
    today,
    hoursLeft,
    landingsLeft,
  }: { today: string; hoursLeft: number | undefined; landingsLeft: number | undefined },
): boolean {
  const isDate = until.date === undefined || addMonths(until.date, toleranceMonths) >= today;
  return isDate && isAtLeast(hoursLeft ?? 0, -toleranceHours) && (landingsLeft ?? 0) >= 0;
}

/** Total hours by the meter that the item names, or by the one that counts its product where this record has no such meter. */
function hoursNowOf({ of, meter }: OpenItem, visit: Visit): number | undefined {
  const named = visit.meters?.readings.find(({ id }) => id === meter);
  return named ? totalHours(named) : hoursOf(visit, of);
}
