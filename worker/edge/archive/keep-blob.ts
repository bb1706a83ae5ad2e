import { sha256 } from '../../core/pack/digest.ts';

// Sealed files lie in a folder per workshop. In a common folder, anyone who knew a digest could restore a ledger
// over another workshop’s file, or find out that it exists. All folders are below `sha256/`, so that the retention
// lock of an older deployment covers them. Packs of the first edition stay in the common folder (`isShared`),
// because a lock forbids moving them; a damaged one is restored into the folder of its workshop. A file is read
// whole, also for a range: only the whole has a digest.

/**
 * Writes a file under its digest, unless it is already there undamaged: it would be the same, and a bucket under a
 * retention lock refuses to write anything again. A damaged file is replaced.
 */
export async function keepBlob(bucket: R2Bucket, key: string, digest: string, bytes: Uint8Array): Promise<void> {
  const standing = await storedAt(bucket, key, digest);
  if (standing.kind === 'whole') return;
  // Never overwrites a file written by somebody else since: it may be on the disk already, and named by a ledger.
  const onlyIf = standing.kind === 'none' ? { onlyIf: NOTHING_STANDS } : {};
  await bucket.put(key, bytes, { sha256: digest, ...onlyIf });
}

const NOTHING_STANDS = new Headers({ 'If-None-Match': '*' });

/** State of a stored file. */
export type Stored = { kind: 'whole'; bytes: Uint8Array } | { kind: 'none' } | { kind: 'damaged' };

/** Max. number of reads of a file that breaks off: a connection may break, a truncated file breaks off each time. */
const MAX_READS = 3;

/** Reads a file and compares it with its digest. */
export async function storedAt(bucket: R2Bucket, key: string, digest: string): Promise<Stored> {
  for (let reads = 0; reads < MAX_READS; reads++) {
    const object = await bucket.get(key);
    if (!object) return { kind: 'none' };
    const buffer = await object.arrayBuffer().catch(() => undefined);
    const bytes = buffer && new Uint8Array(buffer);
    if (bytes) return (await sha256(bytes)) === digest ? { kind: 'whole', bytes } : { kind: 'damaged' };
  }
  return { kind: 'damaged' };
}
