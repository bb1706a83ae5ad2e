import { LIMITS } from '../../core/limits.ts';
import { DAY_MS } from '../../core/units/calendar.ts';

/** Where files lie that were handed in, for a record or for a restoration. */
const HANDED_IN = ['attachments/', 'staged/'] as const;

/**
 * Clears away files that were handed in long ago, so that what no record ever named and no restoration took over does not stay for ever.
 *
 * A file may be swept while a visit that names it is being released. A release therefore keeps what it uses as blobs of its own
 * before the pack exists, and no pack ever reads what is swept here: it finds the file or it does not, and where it does not nothing
 * is sealed. A visit left open for that long says that the file is missing, and it is handed in again.
 *
 * @returns how many were cleared; at most one listing of each place, the rest at the next call
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
