import { pointer, stepsOf } from './pointer.ts';
import { VisitRecord } from './record.ts';
import { type RecordIssue, recordIssues } from './record-issue.ts';
import { type Known, resolveRecord } from './resolve-record.ts';
import { upgrade } from './upgrades.ts';
import { type Visit, visitOf } from './visit.ts';

export type ReadRecord =
  | {
      ok: true;
      /** In the present version. */
      record: VisitRecord;
      visit: Visit;
      /** The record with everything that it relies on; as posted if that was whole. */
      whole: unknown;
      /** Returns the JSON pointer, in the record as posted, of one into the record in the present version. */
      pointerAsPosted(at: string): string;
    }
  | { ok: false; issues: RecordIssue[] };

/**
 * Parses a record from JSON of any shape: makes it whole, upgrades it to the current version, validates it and converts
 * it. Returns all issues at once, with pointers into the record as posted.
 *
 * @param known what the record may leave out
 */
export function readRecord(input: unknown, known: Known = {}): ReadRecord {
  const { whole, issues, pathAsPosted } = resolveRecord(input, known);
  const upgraded = upgrade(whole);
  const parsed = VisitRecord.safeParse(upgraded);
  if (!parsed.success || issues.length > 0) {
    const ofSchema = parsed.success ? [] : recordIssues(parsed.error, { input: upgraded, posted: input, pathAsPosted });
    const isIncomplete = issues.some(({ code }) => code === 'STANDING_FILE_UNKNOWN');
    return { ok: false, issues: [...issues, ...(isIncomplete ? ofSchema.filter(isOfStated) : ofSchema)] };
  }
  const pointerAsPosted = (at: string): string => pointer(...pathAsPosted(stepsOf(at)));
  return { ok: true, record: parsed.data, visit: visitOf(parsed.data), whole, pointerAsPosted };
}

/** Without its standing file a record lacks fields that the file has. */
const isOfStated = ({ code }: RecordIssue): boolean => code !== 'RECORD_FIELD_MISSING';
