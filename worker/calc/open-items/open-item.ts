import type { Visit } from '../../visit/visit.ts';
import { isAtMost } from '../limit-met.ts';

/** What hours are counted of. */
export type Product = NonNullable<Visit['meters']>['readings'][number]['of'];

/** On which clocks, and when on each. Hours are total hours of the product that the meter counts. */
export interface OpenLimit {
  date?: string;
  hours?: number;
  landings?: number;
}

/** Something that stands open when a pack is released, and has to be answered for at a later visit. Plain data: it is kept as JSON. */
export interface OpenItem {
  /**
   * Its name for the life of the aircraft: the pack number in which it first stood, and its identifier there, `Q-SLM-P1/F4`. Left out
   * while that pack has no number.
   */
  item?: string;
  /** When the issue was sealed that gave it this name; left out with the name. Who answered before cannot have meant it. */
  since?: string;
  /** How the record names it in which it stands. */
  id: string;
  kind: 'deferral' | 'watch' | 'due' | 'bulletin' | 'limitation' | 'test';
  /** Why it comes due, for what comes again. */
  basis?: 'directive' | 'life-limit' | 'programme' | 'recommendation' | 'owner' | 'bulletin';
  /** What it is, in the words of the record. */
  text: string;
  until: OpenLimit;
  /** What its hours count, and the meter by its identifier where the record names one. */
  of: Product;
  meter?: string;
  /** When it was done last, for what comes again. */
  done?: OpenLimit;
  toleranceHours?: number;
  toleranceMonths?: number;
  /** How many visits it was carried over without being closed, those before the first pack included where the record says so. */
  timesCarried?: number;
}

/**
 * Whether what is in a record is the same thing as what stands open: of its kind, by its identifier and its words. Limitations have no
 * identifier of their own.
 */
export function isSame(a: OpenItem, b: OpenItem): boolean {
  return a.kind === b.kind && (a.kind === 'limitation' || a.id === b.id) && plain(a.text) === plain(b.text);
}

const plain = (text: string): string => text.trim().replaceAll(/\s+/g, ' ').toLowerCase();

/**
 * Whether an item was put off: on some clock its limit is later than before, or gone, or its hours are those of another meter; and it
 * was not done since.
 *
 * @source common practice, no source
 */
export function isPutOff(before: OpenItem, now: OpenItem): boolean {
  if (wasDone(before, now)) return false;
  return CLOCKS.some((clock) => isLater(before.until[clock], now.until[clock])) || isOnOtherMeter(before, now);
}

const CLOCKS = ['date', 'hours', 'landings'] as const;

function isLater(before: string | number | undefined, now: string | number | undefined): boolean {
  if (before === undefined) return false;
  if (typeof before === 'number' && typeof now === 'number') return !isAtMost(now, before);
  return now === undefined || now > before;
}

function isOnOtherMeter(before: OpenItem, now: OpenItem): boolean {
  return before.until.hours !== undefined && (before.of !== now.of || before.meter !== now.meter);
}

/** Whether it was done later than before, on a clock that tells both times; the first time that it is done needs none to compare with. */
export function wasDone({ done: before = {} }: OpenItem, { done: now = {} }: OpenItem): boolean {
  const isFirst = CLOCKS.every((clock) => before[clock] === undefined);
  return CLOCKS.some((clock) => {
    const [then, since] = [before[clock], now[clock]];
    return since !== undefined && (then === undefined ? isFirst : since > then);
  });
}

/** How much it binds: what is only to be watched, a recommendation, a programme or a decision of the workshop, the authority or the maker. */
function rankOf({ kind, basis }: OpenItem): number {
  if (kind === 'watch') return 0;
  if (basis === 'recommendation' || basis === 'owner') return 1;
  return basis === 'directive' || basis === 'life-limit' || basis === 'bulletin' ? 3 : 2;
}

/** Whether the authority or the maker set its limit. */
export const isBinding = (item: OpenItem): boolean => rankOf(item) === 3;

/**
 * Whether an item can go on as another entry with its limit: one of its kind and basis, with a limit on every clock that it had.
 *
 * @source common practice, no source
 */
export function canExtend(item: OpenItem, entry: OpenItem): boolean {
  const hasClocks = CLOCKS.every((clock) => item.until[clock] === undefined || entry.until[clock] !== undefined);
  return entry.kind === item.kind && entry.basis === item.basis && hasClocks;
}

/**
 * Whether another entry can take the place of an item: one that binds as much, with a limit where the item had one.
 *
 * @source common practice, no source
 */
export function canSupersede(item: OpenItem, entry: OpenItem): boolean {
  const hasLimit = ({ until }: OpenItem): boolean => CLOCKS.some((clock) => until[clock] !== undefined);
  return rankOf(entry) >= rankOf(item) && (!hasLimit(item) || hasLimit(entry)) && !isSame(item, entry);
}

/** An item with the earlier of two limits on every clock. */
export function withEarlierLimits(item: OpenItem, other: OpenItem): OpenItem {
  const { date, hours, landings } = other.until;
  const until: OpenLimit = { ...item.until };
  if (date !== undefined && (until.date === undefined || date < until.date)) until.date = date;
  if (isOnOtherMeter(item, other)) return { ...item, until };
  if (hours !== undefined) until.hours = Math.min(hours, until.hours ?? hours);
  if (landings !== undefined) until.landings = Math.min(landings, until.landings ?? landings);
  return { ...item, until };
}
