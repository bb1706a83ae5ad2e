import type { DueList } from '../../../worker/client/client.ts';
import { isAtLeast } from '../../../worker/core/calc/numbers/limit-met.ts';
import { daysText, landingsText } from '../../../worker/core/pack/views/counts.ts';
import { dueLimit, eitherOf } from '../../../worker/core/pack/views/due-limit.ts';
import { hoursOnMeter, type NamedMeter } from '../../../worker/core/record/meter-name.ts';
import type { VisitRecord } from '../../../worker/core/record/record.ts';
import type { Formatter } from '../../../worker/core/text/formatter.ts';

/** Something that stands open on an aircraft, as it is printed. */
export interface OpenEntry {
  /** Its name for the life of the aircraft, as a later record answers for it. */
  item: string;
  what: string;
  /** When it is due; undefined for what has no clock, such as a limitation. */
  due: { limit: string; left: string; state: string } | undefined;
}

export interface OpenList {
  title: string;
  entries: OpenEntry[];
}

/** The meters by which hours are named, and how to print. */
interface Printing {
  record: Pick<VisitRecord, 'meters'>;
  fmt: Formatter;
}

/** What an item is due by on each of its clocks, and what is left. */
interface Clocks extends NamedMeter {
  date?: string | undefined;
  hours?: number | undefined;
  landings?: number | undefined;
  daysLeft?: number | undefined;
  hoursLeft?: number | undefined;
  landingsLeft?: number | undefined;
  isOverdue: boolean;
  isWithinTolerance?: boolean;
}

/** Everything that stands open, list by list; lists with nothing in them are left out. */
export function openLists(due: DueList, printing: Printing): OpenList[] {
  const { items, deferred, watched, limitations, flightTests } = due;
  const lists: OpenList[] = [
    { title: 'Comes due', entries: items.map((item) => comesDue(item, printing)) },
    { title: 'Put off', entries: deferred.map((finding) => putOff(finding, printing)) },
    { title: 'To be watched', entries: watched.map(withoutClock) },
    { title: 'Limitations in force', entries: limitations.map(withoutClock) },
    { title: 'Flight tests owed', entries: flightTests.map(withoutClock) },
  ];
  return lists.filter(({ entries }) => entries.length > 0);
}

/** One open item by its name, and the list that it stands in. */
export function openEntry(lists: readonly OpenList[], item: string): { title: string; entry: OpenEntry } | undefined {
  for (const { title, entries } of lists) {
    const entry = entries.find((one) => one.item === item);
    if (entry) return { title, entry };
  }
  return undefined;
}

function comesDue(item: DueList['items'][number], printing: Printing): OpenEntry {
  const { dueDate: date, dueHours: hours, dueLandings: landings } = item;
  const clocks = { ...item, date, hours, landings, of: item.of as NamedMeter['of'] };
  return { item: item.openItem, what: named(item.id, item.item), due: dueOf(clocks, printing) };
}

function putOff(finding: DueList['deferred'][number], printing: Printing): OpenEntry {
  const { id, openItem, text, untilDate: date, untilHours: hours } = finding;
  return {
    item: openItem,
    what: named(id, text),
    due: dueOf({ ...finding, date, hours, of: finding.of as NamedMeter['of'] }, printing),
  };
}

function withoutClock({ id = '', openItem, text }: { id?: string; openItem: string; text: string }): OpenEntry {
  return { item: openItem, what: named(id, text), due: undefined };
}

/** Bulletins of earlier packs begin with their identifier already. */
const named = (id: string, text: string): string => (id === '' || text.startsWith(`${id}, `) ? text : `${id} ${text}`);

function dueOf(clocks: Clocks, { record, fmt }: Printing): OpenEntry['due'] {
  const { date, hours, landings, isOverdue, isWithinTolerance } = clocks;
  const landed = landings === undefined ? undefined : landingsText(landings, fmt);
  const limit = eitherOf(fmt, dueLimit(record, clocks, fmt), landed);
  const parts = [
    date === undefined ? '' : leftText(clocks.daysLeft, 'days', (days) => daysText(days, fmt)),
    hours === undefined
      ? ''
      : leftText(clocks.hoursLeft, 'hours', (left, bound) =>
          hoursOnMeter(record, { ...clocks, hours: left }, fmt, bound),
        ),
    landings === undefined ? '' : leftText(clocks.landingsLeft, 'landings', (left) => landingsText(left, fmt)),
  ].filter(Boolean);
  const isUnknown = parts.some((part) => part.endsWith(UNKNOWN));
  return {
    limit: limit ?? 'no limit in the record',
    left: parts.join('; ') || 'no limit',
    state: stateText(
      isOverdue,
      isWithinTolerance ?? false,
      limit === undefined ? 'open' : isUnknown ? 'not known' : 'not due yet',
    ),
  };
}

const UNKNOWN = ' not known';

/** What is left on a clock is rounded down, what it is over by is rounded up. */
function leftText(
  left: number | undefined,
  clock: string,
  say: (left: number, bound: 'most' | 'least') => string,
): string {
  // The newest record reads no such meter, or none at all.
  if (left === undefined) return `${clock}${UNKNOWN}`;
  return isAtLeast(left, 0) ? say(Math.max(0, left), 'most') : `over by ${say(-left, 'least')}`;
}

function stateText(isOverdue: boolean, isWithinTolerance: boolean, otherwise: string): string {
  if (!isOverdue) return otherwise;
  return isWithinTolerance ? 'overdue, within its tolerance' : 'overdue';
}
