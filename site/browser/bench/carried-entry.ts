import { applyEdits, type Edit, modify } from 'jsonc-parser';
import { readText, type TextRange } from './record-text.ts';

/** Edits that add an answer to an open item to the text of a record. */
export interface CarriedEntry {
  edits: Edit[];
  /** Range in which the reason is typed, after the edits. */
  reason: TextRange;
}

const FORMAT = { insertSpaces: true, tabSize: 2, eol: '\n' } as const;

/**
 * Returns the edits that add an answer to an open item at the end of `carried`. The answer must be completed: it names
 * nobody, and without reason and evidence the record is not released. Its time is the end of the work, the latest time
 * allowed.
 *
 * @returns the reason, in a sentence, if the text has no place for the answer
 */
export function carriedEntry(text: string, item: string): CarriedEntry | string {
  const { value } = readText(text);
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return 'The record cannot be read: fix the text first';
  const { carried = [], visit } = value as {
    carried?: unknown;
    visit?: { workEndedAt?: unknown; arrivedAt?: unknown };
  };
  if (!Array.isArray(carried)) return 'carried is not a list: fix it first';
  const at = String(visit?.workEndedAt ?? visit?.arrivedAt ?? '');
  const entry = { item, answer: 'closed', by: '', at, reason: '', evidence: '' };
  const edits = modify(text, ['carried', -1], entry, { formattingOptions: FORMAT, isArrayInsertion: true });
  const { to } = readText(applyEdits(text, edits)).placeOf(`/carried/${carried.length}/reason`);
  return { edits, reason: { from: to - 1, to: to - 1 } };
}
