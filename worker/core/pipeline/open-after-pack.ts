import { openAfter } from '../calc/open-items/carry-over.ts';
import { readingsWith } from '../calc/open-items/readings.ts';
import type { SealedBefore } from '../pack/open-digest.ts';
import { numberOf } from '../pack/pack-number.ts';
import { readRecord } from '../record/read-record.ts';
import { type Past, withOrigin } from './past.ts';

/** A pack, and the records of the issues before its newest, the oldest first. */
interface SealedIssues extends SealedBefore {
  earlier?: readonly { record: unknown; issuedAt: string }[];
}

/**
 * Returns the history after a sealed pack. A record that no longer fits the schema leaves everything unchanged.
 *
 * @param record as sealed, of any version
 */
export function openAfterPack(past: Past, record: unknown, sealed: SealedIssues): Past {
  const read = readRecord(record);
  if (!read.ok) return past;
  const before = withOrigin(past, read.record);
  const { issuedAt: at, isWithdrawn } = sealed;
  const pack = numberOf(sealed.pack);
  const earlier = (sealed.earlier ?? []).flatMap((issue) => {
    const sealedBefore = readRecord(issue.record);
    return sealedBefore.ok ? [{ visit: sealedBefore.visit, at: issue.issuedAt }] : [];
  });
  return {
    open: openAfter(before.open, read.visit, { pack, at, isWithdrawn, earlier }),
    readings: readingsWith(before.readings, read.visit, { pack, ...(isWithdrawn && { isWithdrawn }) }),
  };
}
