import { differences, type StandingChange } from './standing-changes.ts';

/** An issue of the pack of a visit, and what its next one changes. */
export interface EarlierIssue {
  pack: string;
  issuedAt: string;
  changes: StandingChange[];
}

/**
 * Compares a whole record with that of the earlier issue of its pack.
 *
 * @returns undefined if they have the same content
 */
export function earlierIssueOf(
  earlier: { pack: string; issuedAt: string; record: unknown } | undefined,
  record: unknown,
): EarlierIssue | undefined {
  if (!earlier) return undefined;
  const changes = differences(earlier.record, JSON.parse(JSON.stringify(record)), []);
  return changes.length === 0 ? undefined : { pack: earlier.pack, issuedAt: earlier.issuedAt, changes };
}
