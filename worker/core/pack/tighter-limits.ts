import { isAtLeast, isAtMost } from '../calc/numbers/limit-met.ts';
import { COUNTS, type Count } from '../record/counts.ts';
import type { NamedCounter } from '../record/meter-name.ts';
import type { OwnerDue, OwnerFacts, OwnerLimit } from './owner-facts-schema.ts';

/** A limit that allows less now than the pack stated. */
export interface TighterLimit {
  /** Identifier of the limit, or `due/` and the identifier of the item due. */
  id: string;
  /** A text of ours, in English, or of the record. */
  name: string;
  quantity: OwnerLimit['quantity'] | 'date' | 'hours' | Count;
  /** In calculation units, a date as text; null if the pack stated nothing, or if nothing is allowed. */
  sealed: number | string | null;
  now: number | string | null;
  /** Limit that it follows from now, if derived. */
  governedBy?: string | undefined;
  /** Meter of the hours; the airframe's if none is named. */
  meter?: string | undefined;
  /** Counter of a count; that of the log book or of the airframe if none is named. */
  counter?: NamedCounter | undefined;
}

/**
 * Returns every limit of which the second facts allow less than the first: results of today's rules for a record,
 * compared with the sealed ones. A moved empty centre of gravity is always listed, because every loading calculated
 * from it is wrong.
 */
export function tighterLimits(sealed: OwnerFacts, now: OwnerFacts): TighterLimit[] {
  const limits = now.limits.flatMap((limit): TighterLimit[] => {
    const before = sealed.limits.find(({ id }) => id === limit.id);
    if (before && !allowsLess(limit, before.value)) return [];
    const { id, name, quantity, value, governedBy } = limit;
    const entry = { id, name, quantity, sealed: before?.value ?? null, now: value };
    return [governedBy === undefined ? entry : { ...entry, governedBy }];
  });
  const due = now.due.flatMap((each) =>
    tighterDue(
      sealed.due.find(({ id }) => id === each.id),
      each,
    ),
  );
  return [...limits, ...due];
}

/** Whether a limit allows less than a value stated for it; null allows nothing. */
function allowsLess({ bound, value }: OwnerLimit, before: number | null): boolean {
  if (value === null) return before !== null;
  if (before === null) return false;
  if (bound === 'most') return !isAtLeast(value, before);
  return bound === 'least' ? !isAtMost(value, before) : !(isAtLeast(value, before) && isAtMost(value, before));
}

/** Returns the items that are due sooner, or were not listed as due. */
function tighterDue(before: OwnerDue | undefined, now: OwnerDue): TighterLimit[] {
  const entry = { id: `due/${now.id}`, name: now.what };
  const isOtherMeter = before?.meter !== now.meter;
  return [
    ...(now.date !== undefined && (before?.date === undefined || now.date < before.date)
      ? [{ ...entry, quantity: 'date' as const, sealed: before?.date ?? null, now: now.date }]
      : []),
    ...(now.hours !== undefined && (before?.hours === undefined || isOtherMeter || !isAtLeast(now.hours, before.hours))
      ? [{ ...entry, quantity: 'hours' as const, sealed: before?.hours ?? null, now: now.hours, ...meterOf(now) }]
      : []),
    ...COUNTS.flatMap((counts) => {
      const [sealed, limit] = [before?.[counts], now[counts]];
      if (limit === undefined || (sealed !== undefined && limit >= sealed)) return [];
      const counter = now.counters?.find((each) => each.counts === counts);
      return [{ ...entry, quantity: counts, sealed: sealed ?? null, now: limit, ...(counter && { counter }) }];
    }),
  ];
}

const meterOf = ({ meter }: OwnerDue): { meter?: string } => (meter === undefined ? {} : { meter });
