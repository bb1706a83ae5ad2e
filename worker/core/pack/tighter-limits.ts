import { isAtLeast, isAtMost } from '../calc/numbers/limit-met.ts';
import type { OwnerDue, OwnerFacts, OwnerLimit } from './owner-facts-schema.ts';

/** A limit that allows less now than a pack said then. */
export interface TighterLimit {
  /** Identifier of the limit, or `due/` and that of what comes due. */
  id: string;
  /** A text of ours, in English, or of the record. */
  name: string;
  quantity: OwnerLimit['quantity'] | 'date' | 'hours' | 'landings';
  /** In the units of calculation, a date as text; null where the pack said nothing, or where nothing is allowed. */
  sealed: number | string | null;
  now: number | string | null;
  /** What governs it now, where it follows from others. */
  governedBy?: string | undefined;
  /** Of hours, the meter; that of the airframe where none is named. */
  meter?: string | undefined;
}

/**
 * Every limit of which the second facts allow less than the first: what today's rules say of a record against what was sealed.
 * The empty centre of gravity is listed when it moved at all, because every loading that was worked out from it is off.
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

/** Whether a limit allows less than a value that was given for it; null allows nothing. */
function allowsLess({ bound, value }: OwnerLimit, before: number | null): boolean {
  if (value === null) return before !== null;
  if (before === null) return false;
  if (bound === 'most') return !isAtLeast(value, before);
  return bound === 'least' ? !isAtMost(value, before) : !(isAtLeast(value, before) && isAtMost(value, before));
}

/** What has to be done sooner, or was not said to be due at all. */
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
    ...(now.landings !== undefined && (before?.landings === undefined || now.landings < before.landings)
      ? [{ ...entry, quantity: 'landings' as const, sealed: before?.landings ?? null, now: now.landings }]
      : []),
  ];
}

const meterOf = ({ meter }: OwnerDue): { meter?: string } => (meter === undefined ? {} : { meter });
