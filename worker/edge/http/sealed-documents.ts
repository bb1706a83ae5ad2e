import type { PackDocument } from '../../core/core.ts';
import { ArchiveDamaged } from './answer.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import { sealedJson } from './sealed-file.ts';

/**
 * The documents of a pack, as pages show them. Those of a pack of before restorations were held to our markup are held to it here.
 *
 * @throws Refusal 500 where there is anything else in them
 */
export async function sealedDocuments(call: Call, owned: OwnedPack): Promise<PackDocument[]> {
  const { documentsSha256, isShared, summary } = owned.pack;
  const documents = await sealedJson<PackDocument[]>(call, owned, documentsSha256);
  const isOurs = !isShared || documents.every(({ html }) => call.pipeline.isOwnMarkup(html));
  if (!isOurs) throw new ArchiveDamaged(`${summary.pack} ${documentsSha256}`);
  return documents;
}
