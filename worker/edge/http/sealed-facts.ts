import { NO_READINGS, type PackFacts } from '../../core/core.ts';
import { readOwnerFacts } from '../../core/pack/owner-facts-schema.ts';
import { OpenFacts, SealedBy } from './facts-form.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import { sealedJson } from './sealed-file.ts';

/** Usable part of the facts. The name of a workshop is trusted only if it was sealed in this deployment. */
export interface UsableFacts extends Pick<PackFacts, 'open'> {
  sealedBy: { id: string; name?: string; kid: string } | null;
  owner: PackFacts['owner'] | undefined;
}

/**
 * Returns the facts of a pack kept at its release; undefined for packs sealed before facts were kept. Unreadable parts
 * are left out, so that they never prevent a response.
 */
export async function factsOf(call: Call, owned: OwnedPack): Promise<UsableFacts | undefined> {
  const { factsSha256, isRestored } = owned.pack;
  const kept = factsSha256 === null ? undefined : await sealedJson<unknown>(call, owned, factsSha256);
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { sealedBy, owner, open } = kept as Readonly<Record<string, unknown>>;
  const by = SealedBy.safeParse(sealedBy).data;
  const isOurs = by?.id === owned.name.workshop;
  return {
    sealedBy: by && isOurs ? { id: by.id, kid: by.kid, ...(!isRestored && { name: by.name }) } : null,
    owner: readOwnerFacts(owner),
    open: isRestored ? NOTHING_KEPT : openIn(open),
  };
}

/**
 * Empty facts for a restored pack, whose open items are calculated from the records again: its importer has sealed the
 * facts, and may have left something out.
 */
const NOTHING_KEPT: PackFacts['open'] = { over: null, items: [], readings: NO_READINGS };

function openIn(open: unknown): PackFacts['open'] {
  const read = OpenFacts.safeParse(open);
  return read.success ? (read.data as unknown as PackFacts['open']) : NOTHING_KEPT;
}
