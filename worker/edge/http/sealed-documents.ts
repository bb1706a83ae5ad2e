import type { PackDocument } from '../../core/core.ts';
import { ArchiveDamaged } from './answer.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import { sealedJson } from './sealed-file.ts';

/**
 * Reads the documents of a pack. Packs sealed before restorations checked the markup are checked here.
 *
 * @throws HttpProblem 500 if they contain any other markup
 */
export async function sealedDocuments(call: Call, owned: OwnedPack): Promise<PackDocument[]> {
  const { documentsSha256, isShared, summary } = owned.pack;
  const documents = await sealedJson<PackDocument[]>(call, owned, documentsSha256);
  const isOurs = !isShared || documents.every(({ html }) => call.pipeline.isOwnMarkup(html));
  if (!isOurs) throw new ArchiveDamaged(`${summary.pack} ${documentsSha256}`);
  return documents;
}
