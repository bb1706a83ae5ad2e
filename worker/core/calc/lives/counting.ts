import type { Count } from '../../record/counts.ts';
import type { Visit } from '../../record/visit.ts';
import type { Counting } from '../open-items/open-item-result.ts';

type Counter = NonNullable<NonNullable<Visit['meters']>['counters']>[number];

/**
 * Returns the total at release by a counter: its count plus that of an earlier counter.
 *
 * @source common practice, no source
 */
export function totalCount({ out, offset = 0 }: Pick<Counter, 'out' | 'offset'>): number {
  return out + offset;
}

/** Counters that a line or a product names, and the product whose counters come before those of the airframe. */
export interface CountedBy {
  counters?: readonly string[] | undefined;
  of?: Counter['of'] | undefined;
}

/** Landings of the aircraft by the log book, which have no identifier. */
const LANDINGS: Counting = { counts: 'landings', of: 'airframe' };

/**
 * Returns the counters that may count something for a line: those it names; else those of its product; else those of
 * the airframe; without a product, else all. More than one is ambiguous.
 */
export function countersFor({ meters }: Pick<Visit, 'meters'>, counts: Count, by: CountedBy): Counting[] {
  const own = (meters?.counters ?? []).filter((counter) => counter.counts === counts);
  const named = own.filter(({ id }) => by.counters?.includes(id));
  const all: Counting[] = (named.length > 0 ? named : own).map(({ id, of }) => ({ counts, id, of }));
  if (named.length > 0) return all;
  if (counts === 'landings' && meters?.landings !== undefined) all.unshift(LANDINGS);
  const ofKind = (kind: Counter['of'] | undefined): Counting[] => all.filter(({ of }) => of === kind);
  for (const found of [ofKind(by.of), ofKind('airframe')]) if (found.length > 0) return found;
  return by.of === undefined ? all : [];
}

/** Returns the total at release by a counter of the record; undefined if it has no such counter. */
export function countNow({ meters }: Pick<Visit, 'meters'>, counting: Counting | undefined): number | undefined {
  if (!counting) return undefined;
  if (counting.id === undefined) return meters?.landings;
  const counter = meters?.counters?.find(({ id, counts }) => id === counting.id && counts === counting.counts);
  return counter && totalCount(counter);
}
