import type { DueList } from '../../../worker/client/client.ts';
import { isAtLeast } from '../../../worker/core/calc/numbers/limit-met.ts';
import { daysText, landingsText } from '../../../worker/core/pack/views/counts.ts';
import { dueLimit, eitherOf } from '../../../worker/core/pack/views/due-limit.ts';
import { hoursOnMeter, type NamedMeter } from '../../../worker/core/record/meter-name.ts';
import type { VisitRecord } from '../../../worker/core/record/record.ts';
import type { Formatter } from '../../../worker/core/text/formatter.ts';

/** Open item of an aircraft, as printed. */
export interface OpenEntry {
  /** Name of the item for the life of the aircraft, used by later records. */
  item: string;
  what: string;
  /** Due limit; undefined for an item without a limit, such as a limitation. */
  due: { limit: string; left: string; state: string } | undefined;
}

export interface OpenList {
  title: string;
  entries: OpenEntry[];
}

/** Meters that name the hours, and the formatter. */
interface Printing {
  record: Pick<VisitRecord, 'meters'>;
  fmt: Formatter;
}

/** Limits of an item by each of its clocks, and the time left. */
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

/** Returns all open items by list, without empty lists. */
export function openLists(due: DueList, printing: Printing): OpenList[] {
  const { items, deferred, watched, limitations, flightTests } = due;
  const lists: OpenList[] = [
    { title: 'Comes due', entries: items.map((item) => comesDue(item, printing)) },
    { title: 'Deferred', entries: deferred.map((finding) => putOff(finding, printing)) },
    { title: 'To be watched', entries: watched.map(withoutClock) },
    { title: 'Limitations in force', entries: limitations.map(withoutClock) },
    { title: 'Flight tests outstanding', entries: flightTests.map(withoutClock) },
  ];
  return lists.filter(({ entries }) => entries.length > 0);
}

/** Returns an open item by its name, with the title of its list. */
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

/** Returns a text with its identifier in front; bulletins of earlier packs already begin with it. */
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

/** Returns the time left on a clock: rounded down, or rounded up if exceeded. */
function leftText(
  left: number | undefined,
  clock: string,
  say: (left: number, bound: 'most' | 'least') => string,
): string {
  // The newest record has no reading of this meter.
  if (left === undefined) return `${clock}${UNKNOWN}`;
  return isAtLeast(left, 0) ? say(Math.max(0, left), 'most') : `over by ${say(-left, 'least')}`;
}

function stateText(isOverdue: boolean, isWithinTolerance: boolean, otherwise: string): string {
  if (!isOverdue) return otherwise;
  return isWithinTolerance ? 'overdue, within its tolerance' : 'overdue';
}
