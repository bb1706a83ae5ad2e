import type { Carried, VisitRecord } from '../../../worker/client/client.ts';
import { localZone } from '../../../worker/core/record/local-zone.ts';
import { inZoneOf } from '../../../worker/core/units/calendar.ts';
import type { Point } from './read-visit.ts';

/** What a form says of an open item: all is text, and nothing is checked. */
export interface TypedAnswer {
  item: string;
  answer: string;
  by: string;
  /** As a field of type `datetime-local` has it, in the zone of the workshop. */
  at: string;
  reason: string;
  evidence: string;
}

/** Points that are about an open item, by their codes; all name it in their data. */
const CODES: ReadonlySet<string> = new Set([
  'OPEN_ITEM_UNANSWERED',
  'WATCHED_ITEM_UNANSWERED',
  'OPEN_ITEM_PUT_OFF',
  'CARRIED_INCOMPLETE',
  'CARRIED_UNMATCHED',
]);

/** The open item that a point is about; undefined for all others. */
export function openItemOf({ code, data }: Point): string | undefined {
  const item = data?.item;
  return CODES.has(code) && typeof item === 'string' ? item : undefined;
}

/** Which answer of the record a point is about; undefined where there is none yet. */
export function carriedIndexOf({ pointer }: Point): number | undefined {
  const [, part, index] = pointer.split('/');
  return part === 'carried' && index !== undefined ? Number(index) : undefined;
}

/** What a form begins with: the answer that is on record, or the name of the item alone. */
export function typedAnswer(record: VisitRecord, item: string, index: number | undefined): TypedAnswer {
  const kept = index === undefined ? undefined : record.carried?.[index];
  if (!kept) return { item, answer: '', by: '', at: '', reason: '', evidence: '' };
  const { at, reason = '', evidence = '', ...rest } = kept;
  return { ...rest, at: localTime(record, at), reason, evidence };
}

/** The answers of a record with one of them added, or changed where it is there already. */
export function carriedWith(
  record: VisitRecord,
  { item, answer, by, at, reason, evidence }: TypedAnswer,
  index: number | undefined,
): Carried[] {
  const entry = {
    item: item.trim(),
    answer: answer as Carried['answer'],
    by,
    at: `${at}:00${offsetOf(record)}`,
    ...(reason.trim() !== '' && { reason: reason.trim() }),
    ...(evidence.trim() !== '' && { evidence: evidence.trim() }),
  };
  const carried = record.carried ?? [];
  return index === undefined ? [...carried, entry] : carried.with(index, entry);
}

/** The offset of the workshop: the form is filled in by the clock on its wall, wherever the browser is. */
export const offsetOf = (record: VisitRecord): string => /(?:Z|[+-]\d{2}:\d{2})$/.exec(localZone(record))?.[0] ?? 'Z';

/** A moment as a field of type `datetime-local` has it, in the zone of the workshop. */
export const localTime = (record: VisitRecord, moment: string): string =>
  inZoneOf(localZone(record), moment).slice(0, 16);
