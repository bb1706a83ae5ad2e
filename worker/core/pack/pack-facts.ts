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

export const FACTS_FORMAT = 'slipmark-facts/1';

/**
 * What is said of a pack beside its documents, made when it is released and kept: rules that change later change nothing of it. Its digest
 * stands in the manifest.
 */
export interface PackFacts {
  format: typeof FACTS_FORMAT;
  summary: PackSummary;
  /** The workshop as the deployment knew it, and the thumbprint of the key that it sealed with; null where no service did. */
  sealedBy: { id: string; name: string; kid: string } | null;
  /** What its owner flies by. */
  owner: OwnerFacts;
  /**
   * What stands open after the pack and the meters as they were read last, and the digest of the packs that this follows from. None with
   * a correction: what it follows from is then worked out with the issues that it replaces.
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
