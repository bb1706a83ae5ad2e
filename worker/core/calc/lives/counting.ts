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
 * the airframe, of which a product counts only landings and launches; without a product, else all. More than one is
 * ambiguous. A name that the record lacks counts nothing.
 */
export function countersFor({ meters }: Pick<Visit, 'meters'>, counts: Count, by: CountedBy): Counting[] {
  const { counters = [], landings } = meters ?? {};
  const { of: product, counters: names = [] } = by;
  const own = counters.filter((counter) => counter.counts === counts);
  const listed = (list: readonly Counter[]): Counting[] => list.map(({ id, of }) => ({ counts, id, of }));
  const named = own.filter(({ id }) => names.includes(id));
  if (named.length > 0) return listed(named);
  if (names.some((name) => counters.every(({ id }) => id !== name))) return [];
  const all = [...(counts === 'landings' && landings !== undefined ? [LANDINGS] : []), ...listed(own)];
  const ofKind = (kind: Counter['of'] | undefined): Counting[] => all.filter(({ of }) => of === kind);
  const isOfFlight = counts === 'landings' || counts === 'launches';
  const airframe = product === undefined || isOfFlight ? ofKind('airframe') : [];
  for (const found of [ofKind(product), airframe]) if (found.length > 0) return found;
  return product === undefined ? all : [];
}

/** Returns the total at release by a counter of the record; undefined if it has no such counter. */
export function countNow({ meters }: Pick<Visit, 'meters'>, counting: Counting | undefined): number | undefined {
  if (!counting) return undefined;
  if (counting.id === undefined) return meters?.landings;
  const counter = meters?.counters?.find(({ id, counts }) => id === counting.id && counts === counting.counts);
  return counter && totalCount(counter);
}
