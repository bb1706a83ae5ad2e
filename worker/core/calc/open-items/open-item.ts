import { NUMBER_CLOCKS } from '../../record/counts.ts';
import { isAtMost } from '../numbers/limit-met.ts';
import type { OpenItem, OpenLimit } from './open-item-result.ts';

export type { OpenItem, OpenLimit } from './open-item-result.ts';

/**
 * Whether an entry of a record is the same as an open item: same kind, identifier and words. Limitations have no
 * identifier. The items of a product are not those of the product that replaced it.
 */
export function isSame(a: OpenItem, b: OpenItem): boolean {
  const isOfOther = a.product && b.product && a.product.serial !== b.product.serial;
  return (
    a.kind === b.kind && (a.kind === 'limitation' || a.id === b.id) && plain(a.text) === plain(b.text) && !isOfOther
  );
}

const plain = (text: string): string => text.trim().replaceAll(/\s+/g, ' ').toLowerCase();

/**
 * Whether an item was deferred further: on some clock its limit is later than before, or gone, or read on another meter
 * or counter, or all clocks have to expire; and it was not done since. A finding that is only monitored may get a later
 * limit, but not none.
 *
 * @source common practice, no source
 */
export function isPutOff(before: OpenItem, now: OpenItem): boolean {
  if (wasDone(before, now)) return false;
  if (before.kind === 'watch') return hasLimit(before) && !hasLimit(now);
  const waitsForAll = now.dueAfter === 'all' && before.dueAfter !== 'all';
  return (
    waitsForAll ||
    CLOCKS.some((clock) => isLater(before.until[clock], now.until[clock]) || isOnOther(clock, before, now))
  );
}

const CLOCKS = ['date', ...NUMBER_CLOCKS] as const;

/** Whether an item has a limit on any clock. */
export const hasLimit = ({ until }: Pick<OpenItem, 'until'>): boolean =>
  CLOCKS.some((clock) => until[clock] !== undefined);

function isLater(before: string | number | undefined, now: string | number | undefined): boolean {
  if (before === undefined) return false;
  if (typeof before === 'number' && typeof now === 'number') return !isAtMost(now, before);
  return now === undefined || now > before;
}

/** Whether a limit is read on another meter or counter than before. */
function isOnOther(clock: (typeof CLOCKS)[number], before: OpenItem, now: OpenItem): boolean {
  if (clock === 'date' || before.until[clock] === undefined) return false;
  if (clock === 'hours') return before.of !== now.of || before.meter !== now.meter;
  return counterOf(before, clock)?.id !== counterOf(now, clock)?.id;
}

/** Returns the counter of an item on a clock. */
const counterOf = ({ counters }: OpenItem, clock: string) => counters?.find(({ counts }) => counts === clock);

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
  if (item.kind === 'test' && entry.kind !== 'test') return false;
  return rankOf(entry) >= rankOf(item) && (!hasLimit(item) || hasLimit(entry)) && !isSame(item, entry);
}

/** Returns an item with the earlier of two limits on every clock. */
export function withEarlierLimits(item: OpenItem, other: OpenItem): OpenItem {
  const until: Record<string, unknown> = { ...item.until };
  const counters = [...(item.counters ?? [])];
  for (const clock of CLOCKS) {
    const [own, limit] = [item.until[clock], other.until[clock]];
    if (limit === undefined || isOnOther(clock, item, other)) continue;
    const counter = own === undefined && counterOf(other, clock);
    if (counter) counters.push(counter);
    if (own === undefined || limit < own) until[clock] = limit;
  }
  const { dueAfter: _, ...earlier } = item;
  const waitsForAll = item.dueAfter === 'all' && other.dueAfter === 'all';
  return {
    ...(waitsForAll ? item : earlier),
    until: until as OpenLimit,
    ...(counters.length > 0 && { counters }),
  };
}
