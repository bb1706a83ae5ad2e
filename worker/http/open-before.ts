import type { LedgerName } from '../archive/archive.ts';
import type { KeptPack } from '../archive/ledger/ledger-calls.ts';
import type { OpenItem, SealedBefore } from '../pipeline.ts';
import type { Call } from './route.ts';
import { factsOf } from './sealed-facts.ts';
import { sealedJson } from './sealed-file.ts';

/**
 * What stands open after the given packs, worked out from their sealed records. What was kept of it with a pack is taken where it follows
 * from these very packs, so that an aircraft with a long past costs no more than one with a short one.
 *
 * @param packs newest issue of each, the oldest first
 */
export async function openBefore(call: Call, name: LedgerName, packs: readonly KeptPack[]): Promise<OpenItem[]> {
  const { pipeline } = call;
  let open: OpenItem[] = [];
  let next = 0;
  for (let count = packs.length; count > 0 && next === 0; count--) {
    const kept = await keptAfter(call, name, packs.slice(0, count));
    if (kept) [open, next] = [kept, count];
  }
  for (const pack of packs.slice(next)) {
    const record = await sealedJson<unknown>(call, { name, pack }, pack.recordSha256);
    open = pipeline.openAfterPack(open, record, sealedBefore(pack));
  }
  return open;
}

/** What was kept of open items with the last of some packs; undefined where it does not follow from all of them. */
async function keptAfter(call: Call, name: LedgerName, packs: readonly KeptPack[]): Promise<OpenItem[] | undefined> {
  const last = packs.at(-1);
  const facts = last && (await factsOf(call, { name, pack: last }));
  const over = facts && (await call.pipeline.openDigest(packs.map(sealedBefore)));
  return facts?.open.over === over ? facts?.open.items : undefined;
}

function sealedBefore({ summary, recordSha256, withdrawal }: KeptPack): SealedBefore {
  return { pack: summary.pack, issuedAt: summary.issuedAt, recordSha256, isWithdrawn: withdrawal !== null };
}
