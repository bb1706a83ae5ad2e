import { applyEdits, type Edit, modify } from 'jsonc-parser';
import { readText, type TextRange } from './record-text.ts';

/** What puts an answer to an open item into the text of a record. */
export interface CarriedEntry {
  edits: Edit[];
  /** Where the reason is typed, once the edits are made. */
  reason: TextRange;
}

const FORMAT = { insertSpaces: true, tabSize: 2, eol: '\n' } as const;

/**
 * An answer to an open item at the end of `carried`, to be completed: nobody is named, and without its reason and evidence the record is
 * not released. The moment is the end of the work, which is the latest that it can be.
 *
 * @returns why there is none, in a sentence, where the text has no place for it
 */
export function carriedEntry(text: string, item: string): CarriedEntry | string {
  const { value } = readText(text);
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return 'There is no record that can be read: mend the text first';
  const { carried = [], visit } = value as {
    carried?: unknown;
    visit?: { workEndedAt?: unknown; arrivedAt?: unknown };
  };
  if (!Array.isArray(carried)) return 'carried is no list: mend it first';
  const at = String(visit?.workEndedAt ?? visit?.arrivedAt ?? '');
  const entry = { item, answer: 'closed', by: '', at, reason: '', evidence: '' };
  const edits = modify(text, ['carried', -1], entry, { formattingOptions: FORMAT, isArrayInsertion: true });
  const { to } = readText(applyEdits(text, edits)).placeOf(`/carried/${carried.length}/reason`);
  return { edits, reason: { from: to - 1, to: to - 1 } };
}
