import { LIMITS } from '../../core/limits.ts';
import { DAY_MS } from '../../core/units/calendar.ts';

/** Folders of uploaded files, for a record or for a restoration. */
const HANDED_IN = ['attachments/', 'staged/'] as const;

/**
 * Deletes files uploaded long ago, so that files that no record named and no restoration used do not stay forever.
 *
 * A file may be swept while a visit that names it is being released. A release therefore keeps its own copy of the
 * files before the pack exists, and no pack ever reads what is swept here: if a file is missing, nothing is sealed. A
 * visit left open for that long reports the file as missing, and it is uploaded again.
 *
 * @returns number of deleted files; one listing of each folder per call, the rest at the next call
 */
export async function sweepHandedIn(bucket: R2Bucket, now: Date): Promise<number> {
  const oldest = new Date(now.getTime() - LIMITS.handedInDays * DAY_MS);
  let cleared = 0;
  for (const prefix of HANDED_IN) cleared += await sweepOlder(bucket, prefix, oldest);
  return cleared;
}

async function sweepOlder(bucket: R2Bucket, prefix: string, oldest: Date): Promise<number> {
  let cursor: string | undefined;
  for (let page = 0; page < LIMITS.sweptPages; page++) {
    const listing = await bucket.list({ prefix, ...(cursor !== undefined && { cursor }) });
    const old = listing.objects.filter(({ uploaded }) => uploaded < oldest).map(({ key }) => key);
    if (old.length > 0) {
      await bucket.delete(old);
      return old.length;
    }
    if (!listing.truncated) return 0;
    cursor = listing.cursor;
  }
  return 0;
}
