import type { DueList } from '../../../worker/client/client.ts';
import { isAtLeast } from '../../../worker/core/calc/numbers/limit-met.ts';
import { daysText } from '../../../worker/core/pack/views/counts.ts';
import { countTexts, dueLimit } from '../../../worker/core/pack/views/due-limit.ts';
import { COUNTS } from '../../../worker/core/record/counts.ts';
import { hoursOnMeter, type NamedMeter } from '../../../worker/core/record/meter-name.ts';
import type { VisitRecord } from '../../../worker/core/record/record.ts';
import type { Formatter } from '../../../worker/core/text/formatter.ts';

/** Open item of an aircraft, as printed. */
export interface OpenEntry {
  /** Name of the item for the life of the aircraft, used by later records. */
  item: string;
  what: string;
  /** Kind of an item that comes due. */
  kind: string;
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

type DueItem = DueList['comingDue'][number];

/** Kinds of items, as the due list of a pack calls them. */
const KINDS: Readonly<Partial<Record<DueItem['kind'], string>>> = {
  due: 'maintenance',
  bulletin: 'bulletin',
  deferral: 'deferred',
  watch: 'look again',
  certificate: 'certificate',
};

/** Returns all open items by list, without empty lists. */
export function openLists(due: DueList, printing: Printing): OpenList[] {
  const { comingDue, limitations, flightTests } = due;
  const watched = due.watched.filter(({ openItem }) => comingDue.every((item) => item.openItem !== openItem));
  const lists: OpenList[] = [
    { title: 'Comes due', entries: comingDue.map((item) => comesDue(item, printing)) },
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

function comesDue(item: DueItem, printing: Printing): OpenEntry {
  const kind = KINDS[item.kind] ?? item.kind;
  return { item: item.openItem, what: named(item.id, item.item), kind, due: dueOf(item, printing) };
}

function withoutClock({ id = '', openItem, text }: { id?: string; openItem: string; text: string }): OpenEntry {
  return { item: openItem, what: named(id, text), kind: '', due: undefined };
}

/** Returns a text with its identifier in front; bulletins of earlier packs already begin with it. */
const named = (id: string, text: string): string => (id === '' || text.startsWith(`${id}, `) ? text : `${id} ${text}`);

function dueOf(item: DueItem, { record, fmt }: Printing): OpenEntry['due'] {
  const { dueDate: date, dueHours: hours, dueLandings: landings, dueCounts, meter, counters } = item;
  const { isOverdue, isWithinTolerance } = item;
  const of = item.of as NamedMeter['of'];
  const counts = { landings, ...dueCounts };
  const countsLeft = { landings: item.landingsLeft, ...item.countsLeft };
  const limit = dueLimit(record, { ...item, ...counts, date, hours, of }, fmt);
  const parts = [
    date === undefined ? '' : leftText(item.daysLeft, 'days', (days) => daysText(days, fmt)),
    hours === undefined
      ? ''
      : leftText(item.hoursLeft, 'hours', (left, bound) =>
          hoursOnMeter(record, { hours: left, meter, of }, fmt, bound),
        ),
    ...COUNTS.map((clock) =>
      counts[clock] === undefined
        ? ''
        : leftText(countsLeft[clock], clock, (left) => countTexts(record, { [clock]: left }, counters, fmt).join()),
    ),
  ].filter(Boolean);
  const isUnknown = parts.some((part) => part.endsWith(UNKNOWN));
  return {
    limit: limit ?? 'no limit in the record',
    left: parts.join('; ') || 'no limit',
    state: stateText(
      isOverdue,
      isWithinTolerance,
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
