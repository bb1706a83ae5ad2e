import { LIMITS } from '../limits.ts';

const DAY_MS = 86_400_000;

/**
 * Clears away files that were handed in long ago, so that what no record ever named does not stay for ever.
 *
 * A file may be swept while a visit that names it is being released. A release therefore keeps what it uses as blobs of its own
 * before the pack exists, and no pack ever reads what is swept here: it finds the file or it does not, and where it does not nothing
 * is sealed. A visit left open for that long says that the file is missing, and it is handed in again.
 *
 * @returns how many were cleared; at most one listing, the rest at the next call
 */
export async function sweepAttachments(bucket: R2Bucket, now: Date): Promise<number> {
  const oldest = now.getTime() - LIMITS.attachmentDays * DAY_MS;
  let cursor: string | undefined;
  for (let page = 0; page < LIMITS.sweptPages; page++) {
    const listing = await bucket.list({ prefix: 'attachments/', ...(cursor !== undefined && { cursor }) });
    const old = listing.objects.filter(({ uploaded }) => uploaded.getTime() < oldest).map(({ key }) => key);
    if (old.length > 0) {
      await bucket.delete(old);
      return old.length;
    }
    if (!listing.truncated) return 0;
    cursor = listing.cursor;
  }
  return 0;
}
