import type { PackFacts } from '../pipeline.ts';
import type { Call } from './route.ts';
import { type OwnedPack, sealedJson } from './sealed-file.ts';

/** What was said of a pack when it was released; undefined for packs of before that was kept. */
export async function factsOf(call: Call, owned: OwnedPack): Promise<PackFacts | undefined> {
  const { factsSha256 } = owned.pack;
  return factsSha256 === null ? undefined : sealedJson<PackFacts>(call, owned, factsSha256);
}
