import { isAtLeast, isAtMost } from '../calc/numbers/limit-met.ts';
import { hasLimit, type OpenItem } from '../calc/open-items/open-item.ts';
import { dueItems, type OpenDue } from '../calc/open-items/time-left.ts';
import { COUNTS } from '../record/counts.ts';
import type { PackContext } from './context.ts';
import { type DueBy, dueLimit, eitherOf } from './views/due-limit.ts';

/** An item due, with its limit. */
export interface NextDue extends DueBy {
  /** Name for the life of the aircraft; in the first pack with it, its identifier in the record. */
  id: string;
  kind: OpenItem['kind'];
  /** Reason for which it comes due; left out for findings. */
  basis?: OpenItem['basis'] | undefined;
  what: string;
  /** Date, hours and counts, in one text. */
  limit: string;
  /** Date of the limit, if it has one. */
  date: string | undefined;
  /** Hours of the limit, and their meter: the airframe's if none is named. */
  hours: number | undefined;
  meter: string | undefined;
  of: OpenItem['of'];
  /** Hours left at the reference time, if the meter was read. */
  hoursLeft: number | undefined;
  /** What is left on the other clocks. */
  left?: Pick<OpenDue, 'daysLeft' | 'landingsLeft' | 'countsLeft'>;
  /** Past its limit at that time. */
  isOverdue: boolean;
}

/**
 * Returns the items due after a visit, the soonest first: those of the due list that have a limit, of this pack and of
 * earlier ones.
 */
export function nextDue(
  { visit, results, fmt }: Pick<PackContext, 'visit' | 'results' | 'fmt'>,
  at: string,
): NextDue[] {
  const items = dueItems(results.open.standing, visit, results.readings, fmt.local(at)).filter(hasLimit);
  return items.map((open): NextDue => {
    const { id, item = id, kind, text, until, of, meter, counters, dueAfter, hoursLeft, isOverdue } = open;
    const { daysLeft, landingsLeft, countsLeft } = open;
    const { date, hours } = until;
    const by = { ...until, date, hours, meter, of, ...(counters && { counters }), ...(dueAfter && { dueAfter }) };
    return {
      ...by,
      id: item,
      kind,
      basis: open.basis,
      what: kind === 'bulletin' ? `${id}, ${text}` : kind === 'certificate' ? fmt.term(text) : text,
      limit: dueLimit(visit, by, fmt) ?? '',
      hoursLeft,
      left: {
        ...(daysLeft !== undefined && { daysLeft }),
        ...(landingsLeft !== undefined && { landingsLeft }),
        ...(countsLeft && { countsLeft }),
      },
      isOverdue,
    };
  });
}

/**
 * Returns the limit up to which the due items allow flight: the earliest date, the fewest hours on each meter and the
 * fewest landings, launches, cycles and starts on each counter, the first of them. Meters of one aircraft run at similar
 * rates: one with more than twice the hours left of another is not listed. Of an item that waits for all of its clocks,
 * an expired one does not bind. Undefined if no item has a limit.
 *
 * @source common practice, no source
 */
export function flownUntil(
  items: readonly NextDue[],
  { visit, fmt }: Pick<PackContext, 'visit' | 'fmt'>,
): string | undefined {
  const due = items.map(bindingClocks);
  const [date] = due.flatMap((each) => each.date ?? []).sort();
  const meters = new Map<string, NextDue>();
  const counted = new Map<string, DueBy>();
  for (const each of due) {
    for (const counts of COUNTS) {
      const value = each[counts];
      const counters = each.counters?.filter((counter) => counter.counts === counts);
      const name = `${counts} ${counters?.[0]?.id ?? ''}`;
      if (value !== undefined && value < (counted.get(name)?.[counts] ?? Number.POSITIVE_INFINITY))
        counted.set(name, { [counts]: value, counters });
    }
    if (each.hours === undefined) continue;
    const meter = `${each.of} ${each.meter ?? ''}`;
    if (each.hours < (meters.get(meter)?.hours ?? Number.POSITIVE_INFINITY)) meters.set(meter, each);
  }
  const most =
    2 * Math.max(0, Math.min(...[...meters.values()].map(({ hoursLeft = Number.POSITIVE_INFINITY }) => hoursLeft)));
  const binding = [...meters.values()].filter(({ hoursLeft = 0 }) => isAtMost(hoursLeft, most));
  return [{ date }, ...binding.map(({ hours, meter, of }) => ({ hours, meter, of })), ...counted.values()].reduce(
    (limits: string | undefined, by: DueBy) => eitherOf(fmt, limits, dueLimit(visit, by, fmt)),
    undefined,
  );
}

/** Returns an item without the expired clocks, if it waits for all of them and is not due yet. */
function bindingClocks(due: NextDue): NextDue {
  if (due.dueAfter !== 'all' || due.isOverdue) return due;
  const { daysLeft, landingsLeft, countsLeft = {} } = due.left ?? {};
  const left = { date: daysLeft, hours: due.hoursLeft, landings: landingsLeft, ...countsLeft };
  const spent = Object.entries(left).filter(([, rest]) => rest !== undefined && !isAtLeast(rest, 0));
  return { ...due, ...Object.fromEntries(spent.map(([clock]) => [clock, undefined])) };
}
