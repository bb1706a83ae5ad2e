import type { Manifest, PackDocument } from '../../core/core.ts';
import type { OwnedPack } from './owned-pack.ts';
import { shownIn } from './pack-attachments.ts';
import type { Call } from './route.ts';
import { sealedJson } from './sealed-file.ts';

/**
 * Returns the digests of the photographs and documents that the documents of a pack show or are followed by: they were
 * kept when it was sealed.
 */
export async function shownFiles(call: Call, owned: OwnedPack): Promise<Set<string>> {
  const documents = await sealedJson<PackDocument[]>(call, owned, owned.pack.documentsSha256);
  const manifest = await sealedJson<Partial<Manifest> | null>(call, owned, owned.pack.manifestSha256);
  return shownIn(documents, manifest);
}
