import { sha256 } from '../pack/digest.ts';

/**
 * Writes a file under its digest, unless it stands there whole: it would be the same, and a bucket under a retention lock refuses to
 * write anything again. What stands there damaged is replaced.
 */
export async function keepBlob(bucket: R2Bucket, key: string, digest: string, bytes: Uint8Array): Promise<void> {
  const standing = await bytesAt(bucket, key);
  if (standing && (await sha256(standing)) === digest) return;
  await bucket.put(key, bytes, { sha256: digest });
}

/** What stands under a key, or null where nothing does. A file that breaks off is one that is damaged. */
export async function bytesAt(bucket: R2Bucket, key: string): Promise<Uint8Array | null> {
  const object = await bucket.get(key);
  if (!object) return null;
  const bytes = new Uint8Array(await object.arrayBuffer());
  return bytes;
}
