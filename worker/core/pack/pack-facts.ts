import { openAfter } from '../calc/open-items/carry-over.ts';
import type { OpenItem } from '../calc/open-items/open-item.ts';
import { NO_READINGS, type Readings, readingsWith } from '../calc/open-items/readings.ts';
import type { PackContext } from './context.ts';
import type { PackIdentity } from './identity.ts';
import { openDigest, type SealedBefore } from './open-digest.ts';
import { ownerFacts } from './owner-facts.ts';
import type { OwnerFacts } from './owner-facts-schema.ts';
import { numberOf } from './pack-number.ts';
import type { PackSummary } from './summary.ts';

// Facts are sealed with the pack, because a new rule would otherwise change what an old pack says. Today’s rules are
// compared with them, and only a lower limit is shown. Open items come from the newest facts over the same packs
// (`over`), so a long history costs one read.

export const FACTS_FORMAT = 'slipmark-facts/1';

/**
 * Facts of a pack outside its documents, made at its release and kept: later changes of rules do not change them. Their
 * digest is in the manifest.
 */
export interface PackFacts {
  format: typeof FACTS_FORMAT;
  summary: PackSummary;
  /** The workshop as known to the deployment at the time, and the thumbprint of its seal key; null without a service. */
  sealedBy: { id: string; name: string; kid: string } | null;
  /** Figures with which the owner flies. */
  owner: OwnerFacts;
  /**
   * Open items after the pack and the last meter readings, and the digest of the packs on which they depend. Left out
   * for a correction: its basis is then calculated with the issues that it replaces.
   */
  open: { over: string | null; items: OpenItem[]; readings: Readings };
}

export async function packFacts(
  { identity, visit, results }: PackContext & { identity: PackIdentity },
  {
    place,
    recordSha256,
    summary,
  }: {
    place: { pack: string; issue: number; before: readonly SealedBefore[] };
    recordSha256: string;
    summary: PackSummary;
  },
): Promise<PackFacts> {
  const { issuedAt } = identity;
  const pack = numberOf(place.pack);
  const packs = [...place.before, { pack: place.pack, issuedAt, recordSha256, isWithdrawn: false }];
  const open =
    place.issue > 1
      ? { over: null, items: [], readings: NO_READINGS }
      : {
          over: await openDigest(packs),
          items: openAfter(results.open.before, visit, { pack, at: issuedAt }),
          readings: readingsWith(results.readings, visit, { pack }),
        };
  const owner = ownerFacts(visit, results, issuedAt);
  return { format: FACTS_FORMAT, summary, sealedBy: identity.sealedBy ?? null, owner, open };
}
