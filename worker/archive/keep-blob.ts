/**
 * Writes a file under its digest, unless it stands there: it would be the same, and a bucket under a retention lock refuses to
 * write anything again.
 */
export async function keepBlob(bucket: R2Bucket, key: string, sha256: string, bytes: Uint8Array): Promise<void> {
  if (!(await bucket.head(key))) await bucket.put(key, bytes, { sha256 });
}
