import { VisitRecord } from './record.ts';
import { type RecordIssue, recordIssues } from './record-issue.ts';
import { upgrade } from './upgrades.ts';
import { type Visit, visitOf } from './visit.ts';

export type ReadRecord =
  | {
      ok: true;
      /** In the present version. */
      record: VisitRecord;
      visit: Visit;
    }
  | { ok: false; issues: RecordIssue[] };

/**
 * Parses a record from JSON of any shape: upgrades it to the current version, validates it whole and converts it.
 * Returns all issues at once, with pointers into the record as posted.
 */
export function readRecord(input: unknown): ReadRecord {
  const upgraded = upgrade(input);
  const parsed = VisitRecord.safeParse(upgraded);
  if (!parsed.success) return { ok: false, issues: recordIssues(parsed.error, upgraded, input) };
  return { ok: true, record: parsed.data, visit: visitOf(parsed.data) };
}
