import type { Carried, VisitRecord } from '../../../worker/client/client.ts';
import { localZone } from '../../../worker/core/record/local-zone.ts';
import { inZoneOf } from '../../../worker/core/units/calendar.ts';
import type { Point } from './read-visit.ts';

/** Fields of the form about an open item: all are text, nothing is checked. */
export interface TypedAnswer {
  item: string;
  answer: string;
  by: string;
  /** Local time of the workshop, in the format of a field of type `datetime-local`. */
  at: string;
  reason: string;
  evidence: string;
}

/** Codes of findings about an open item; each has the item in its data. */
const CODES: ReadonlySet<string> = new Set([
  'OPEN_ITEM_UNANSWERED',
  'WATCHED_ITEM_UNANSWERED',
  'OPEN_ITEM_PUT_OFF',
  'CARRIED_INCOMPLETE',
  'CARRIED_UNMATCHED',
]);

/** Returns the open item that a finding is about; undefined for all other findings. */
export function openItemOf({ code, data }: Point): string | undefined {
  const item = data?.item;
  return CODES.has(code) && typeof item === 'string' ? item : undefined;
}

/** Returns the index of the answer that a finding is about; undefined if the record has no answer yet. */
export function carriedIndexOf({ pointer }: Point): number | undefined {
  const [, part, index] = pointer.split('/');
  return part === 'carried' && index !== undefined ? Number(index) : undefined;
}

/** Returns the initial fields of the form: the answer in the record, or only the name of the item. */
export function typedAnswer(record: VisitRecord, item: string, index: number | undefined): TypedAnswer {
  const kept = index === undefined ? undefined : record.carried?.[index];
  if (!kept) return { item, answer: '', by: '', at: '', reason: '', evidence: '' };
  const { at, reason = '', evidence = '', ...rest } = kept;
  return { ...rest, at: localTime(record, at), reason, evidence };
}

/** Returns the answers of a record with one of them added or, if it exists, changed. */
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

/** Returns the UTC offset of the workshop: the form uses the workshop's local time, not that of the browser. */
export const offsetOf = (record: VisitRecord): string => /(?:Z|[+-]\d{2}:\d{2})$/.exec(localZone(record))?.[0] ?? 'Z';

/** Returns a timestamp as local time of the workshop, in the format of a field of type `datetime-local`. */
export const localTime = (record: VisitRecord, moment: string): string =>
  inZoneOf(localZone(record), moment).slice(0, 16);
