import { isAtMost } from '../numbers/limit-met.ts';
import type { OpenItem, OpenLimit } from './open-item-result.ts';

export type { OpenItem, OpenLimit } from './open-item-result.ts';

/** Whether an entry of a record is the same as an open item: same kind, identifier and words. Limitations have no identifier. */
export function isSame(a: OpenItem, b: OpenItem): boolean {
  return a.kind === b.kind && (a.kind === 'limitation' || a.id === b.id) && plain(a.text) === plain(b.text);
}

const plain = (text: string): string => text.trim().replaceAll(/\s+/g, ' ').toLowerCase();

/**
 * Whether an item was deferred further: on some clock its limit is later than before, or gone, or its hours are those
 * of another meter; and it was not done since.
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

/** Whether it was done later than before, on a clock that has both times; the first time needs no comparison. */
export function wasDone({ done: before = {} }: OpenItem, { done: now = {} }: OpenItem): boolean {
  const isFirst = CLOCKS.every((clock) => before[clock] === undefined);
  return CLOCKS.some((clock) => {
    const [then, since] = [before[clock], now[clock]];
    return since !== undefined && (then === undefined ? isFirst : since > then);
  });
}

/**
 * Returns how much an item binds: one only to be monitored, a recommendation, a programme or a decision of the
 * workshop, the authority or the manufacturer.
 */
function rankOf({ kind, basis }: OpenItem): number {
  if (kind === 'watch') return 0;
  if (basis === 'recommendation' || basis === 'owner') return 1;
  return basis === 'directive' || basis === 'life-limit' || basis === 'bulletin' ? 3 : 2;
}

/** Whether the authority or the manufacturer set its limit. */
export const isBinding = (item: OpenItem): boolean => rankOf(item) === 3;

/**
 * Whether an item can continue as another entry with its limit: one of its kind and basis, with a limit on every clock
 * that it had.
 *
 * @source common practice, no source
 */
export function canExtend(item: OpenItem, entry: OpenItem): boolean {
  const hasClocks = CLOCKS.every((clock) => item.until[clock] === undefined || entry.until[clock] !== undefined);
  return entry.kind === item.kind && entry.basis === item.basis && hasClocks;
}

/**
 * Whether another entry can replace an item: one that binds as much, with a limit if the item had one. Only another
 * flight test replaces a flight test.
 *
 * @source common practice, no source
 */
export function canSupersede(item: OpenItem, entry: OpenItem): boolean {
  const hasLimit = ({ until }: OpenItem): boolean => CLOCKS.some((clock) => until[clock] !== undefined);
  if (item.kind === 'test' && entry.kind !== 'test') return false;
  return rankOf(entry) >= rankOf(item) && (!hasLimit(item) || hasLimit(entry)) && !isSame(item, entry);
}

/** Returns an item with the earlier of two limits on every clock. */
export function withEarlierLimits(item: OpenItem, other: OpenItem): OpenItem {
  const { date, hours, landings } = other.until;
  const until: OpenLimit = { ...item.until };
  if (date !== undefined && (until.date === undefined || date < until.date)) until.date = date;
  if (isOnOtherMeter(item, other)) return { ...item, until };
  if (hours !== undefined) until.hours = Math.min(hours, until.hours ?? hours);
  if (landings !== undefined) until.landings = Math.min(landings, until.landings ?? landings);
  return { ...item, until };
}
