import { ArchiveDamaged, orUnavailable } from './answer.ts';
import { blobOf } from './lies-shared.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';

/**
 * Reads a file that the ledger names.
 *
 * @throws HttpProblem 500 if it is missing or damaged: a file in a ledger was there
 */
export async function sealedFile(call: Call, owned: OwnedPack, sha256: string): Promise<Uint8Array> {
  const bytes = orUnavailable(await call.world.archive.blob(await blobOf(call, owned, sha256)));
  if (!bytes) throw new ArchiveDamaged(`${owned.pack.summary.pack} ${sha256}`);
  return bytes;
}

/**
 * Reads a sealed file as JSON: it was made by this code, or its form was checked when it was restored.
 *
 * @throws HttpProblem 500 if it is not JSON
 */
export async function sealedJson<T>(call: Call, owned: OwnedPack, sha256: string): Promise<T> {
  const bytes = await sealedFile(call, owned, sha256);
  try {
    return JSON.parse(new TextDecoder().decode(bytes)) as T;
  } catch {
    throw new ArchiveDamaged(`${owned.pack.summary.pack} ${sha256}`);
  }
}
