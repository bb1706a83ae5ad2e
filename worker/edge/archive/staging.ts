import type { LedgerName, SealFacts } from './archive.ts';

// What the seal of a PDF proved is stored with it, so that the restoration itself reads no PDF. Documents are
// compared with the manifest and must have our markup.

/**
 * Returns the folder of files staged for the restoration of one ledger. It is separate from the sealed files, which
 * under a retention lock can never be deleted, and separate for each ledger, so that nobody gets the file of another
 * through its digest.
 */
const folderOf = ({ workshop, registration }: LedgerName): string => `staged/${workshop}/${registration}/`;

export const stagedKey = (name: LedgerName, sha256: string): string => `${folderOf(name)}${sha256}`;

/** Stages a file, with the facts of its seal if it has one. */
export async function stage(
  bucket: R2Bucket,
  name: LedgerName,
  { sha256, bytes, seal }: { sha256: string; bytes: Uint8Array; seal: SealFacts | null },
): Promise<void> {
  const customMetadata: Record<string, string> = seal ? { seal: JSON.stringify(seal) } : {};
  await bucket.put(stagedKey(name, sha256), bytes, { sha256, customMetadata });
}

/** Returns every staged file, by digest. */
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

/** Max. keys that the platform deletes in one call. */
const DELETED_AT_ONCE = 1000;

/** Deletes staged files. */
export async function unstage(bucket: R2Bucket, name: LedgerName, digests: readonly string[]): Promise<void> {
  for (let at = 0; at < digests.length; at += DELETED_AT_ONCE)
    await bucket.delete(digests.slice(at, at + DELETED_AT_ONCE).map((sha256) => stagedKey(name, sha256)));
}
