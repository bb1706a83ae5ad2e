import { isAtMost } from '../calc/numbers/limit-met.ts';
import type { OpenItem } from '../calc/open-items/open-item.ts';
import { timeLeft } from '../calc/open-items/time-left.ts';
import type { PackContext } from './context.ts';
import { landingsText } from './views/counts.ts';
import { dueLimit, eitherOf } from './views/due-limit.ts';

/** An item due, with its limit. */
export interface NextDue {
  /** Name for the life of the aircraft; in the first pack with it, its identifier in the record. */
  id: string;
  what: string;
  /** Date, hours and landings, in one text. */
  limit: string;
  /** Date of the limit, if it has one. */
  date: string | undefined;
  /** Hours of the limit, and their meter: the airframe's if none is named. */
  hours: number | undefined;
  meter: string | undefined;
  landings: number | undefined;
  of: OpenItem['of'];
  /** Hours left at the reference time, if the meter was read. */
  hoursLeft: number | undefined;
  /** Past its limit at that time. */
  isOverdue: boolean;
}

/** Returns the items due after a visit, the soonest first: all open items with a limit, of this pack and of earlier ones. */
export function nextDue(
  { visit, results, fmt }: Pick<PackContext, 'visit' | 'results' | 'fmt'>,
  at: string,
): NextDue[] {
  return timeLeft(results.open.standing, results.readings, fmt.local(at)).flatMap(
    ({ id, item = id, kind, text, until, of, meter, hoursLeft, isOverdue }) => {
      const { date, hours, landings } = until;
      const counted = landings === undefined ? undefined : landingsText(landings, fmt);
      const limit = eitherOf(fmt, dueLimit(visit, { date, hours, meter, of }, fmt), counted);
      const what = kind === 'bulletin' ? `${id}, ${text}` : text;
      return limit === undefined
        ? []
        : [{ id: item, what, limit, date, hours, meter, landings, of, hoursLeft, isOverdue }];
    },
  );
}

/**
 * Returns the limit up to which the due items allow flight: the earliest date, the fewest hours on each meter and the
 * fewest landings, the first of them. Meters of one aircraft run at similar rates: one with more than twice the hours
 * left of another is not listed. Undefined if no item has a limit.
 *
 * @source common practice, no source
 */
export function flownUntil(
  due: readonly NextDue[],
  { visit, fmt }: Pick<PackContext, 'visit' | 'fmt'>,
): string | undefined {
  const [date] = due.flatMap((each) => each.date ?? []).sort();
  const landings = due.flatMap((each) => each.landings ?? []);
  const meters = new Map<string, NextDue>();
  for (const each of due) {
    if (each.hours === undefined) continue;
    const meter = `${each.of} ${each.meter ?? ''}`;
    if (each.hours < (meters.get(meter)?.hours ?? Number.POSITIVE_INFINITY)) meters.set(meter, each);
  }
  const most =
    2 * Math.max(0, Math.min(...[...meters.values()].map(({ hoursLeft = Number.POSITIVE_INFINITY }) => hoursLeft)));
  const binding = [...meters.values()].filter(({ hoursLeft = 0 }) => isAtMost(hoursLeft, most));
  return [
    date && fmt.date(date),
    ...binding.map(({ hours, meter, of }) => dueLimit(visit, { hours, meter, of }, fmt)),
    landings.length === 0 ? undefined : landingsText(Math.min(...landings), fmt),
  ].reduce((limits, limit) => eitherOf(fmt, limits, limit));
}
