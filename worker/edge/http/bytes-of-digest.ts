import { sha256 } from '../../core/pack/digest.ts';
import { HttpProblem } from './problem.ts';
import { readBytes } from './read-bytes.ts';

/**
 * Reads the body of a request that states its digest.
 *
 * @throws HttpProblem 422 if the bytes have another digest; as `readBytes`
 */
export async function bytesOfDigest(request: Request, digest: string, maxBytes: number): Promise<Uint8Array> {
  const bytes = await readBytes(request, maxBytes);
  const actual = await sha256(bytes);
  if (actual !== digest)
    throw new HttpProblem('digest-differs', `The SHA-256 of what arrived is ${actual}: current value is ${digest}`);
  return bytes;
}
