import type { LedgerName, SealFacts } from './archive.ts';

/**
 * What was handed in for the restoration of one ledger. Blobs are kept for all workshops together under their digest; whoever knows a
 * digest must not come by the file of another workshop through it. So a ledger is restored only over files that its own workshop
 * brought, and each of those leaves a mark here until it is.
 */
const folderOf = ({ workshop, registration }: LedgerName): string => `restoration/${workshop}/${registration}/`;

/** Marks a blob as brought, with what its seal proves where it has one. */
export async function stage(bucket: R2Bucket, name: LedgerName, sha256: string, seal: SealFacts | null) {
  const customMetadata: Record<string, string> = seal ? { seal: JSON.stringify(seal) } : {};
  await bucket.put(`${folderOf(name)}${sha256}`, new Uint8Array(), { customMetadata });
}

/** Every blob that was brought, by digest. */
export async function staged(bucket: R2Bucket, name: LedgerName): Promise<Map<string, SealFacts | null>> {
  const prefix = folderOf(name);
  const found = new Map<string, SealFacts | null>();
  let cursor: string | undefined;
  do {
    const listing = await bucket.list({ prefix, include: ['customMetadata'], ...(cursor !== undefined && { cursor }) });
    for (const { key, customMetadata } of listing.objects) {
      const seal = customMetadata?.seal;
      found.set(key.slice(prefix.length), seal === undefined ? null : (JSON.parse(seal) as SealFacts));
    }
    cursor = listing.truncated ? listing.cursor : undefined;
  } while (cursor !== undefined);
  return found;
}

/** Most keys that the platform deletes in one call. */
const DELETED_AT_ONCE = 1000;

/** Takes the marks away; the blobs stay. */
export async function unstage(bucket: R2Bucket, name: LedgerName, digests: readonly string[]): Promise<void> {
  for (let at = 0; at < digests.length; at += DELETED_AT_ONCE)
    await bucket.delete(digests.slice(at, at + DELETED_AT_ONCE).map((sha256) => `${folderOf(name)}${sha256}`));
}
