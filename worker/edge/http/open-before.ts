import { NO_READINGS, type Past, type SealedBefore } from '../../core/core.ts';
import type { LedgerName } from '../archive/archive.ts';
import type { KeptPack } from '../archive/ledger/ledger-calls.ts';
import { orUnavailable } from './answer.ts';
import type { Call } from './route.ts';
import { factsOf } from './sealed-facts.ts';
import { sealedJson } from './sealed-file.ts';

/**
 * Returns the open items and meter readings after the given packs, calculated from their sealed records. The facts kept
 * with a pack are used if they follow from these very packs, so that an aircraft with a long past costs no more than
 * one with a short one.
 *
 * @param packs newest issue of each, oldest first
 */
export async function openBefore(call: Call, name: LedgerName, packs: readonly KeptPack[]): Promise<Past> {
  let past: Past = { open: [], readings: NO_READINGS };
  let next = 0;
  for (let count = packs.length; count > 0 && next === 0; count--) {
    const kept = await keptAfter(call, name, packs.slice(0, count));
    if (kept) [past, next] = [kept, count];
  }
  for (const pack of packs.slice(next)) {
    const record = await sealedJson<unknown>(call, { name, pack }, pack.recordSha256);
    past = call.pipeline.openAfterPack(past, record, {
      ...sealedBefore(pack),
      earlier: await earlierIssues(call, name, pack),
    });
  }
  return past;
}

/** Returns the facts kept with the last of some packs; undefined if they do not follow from all of them. */
async function keptAfter(call: Call, name: LedgerName, packs: readonly KeptPack[]): Promise<Past | undefined> {
  const last = packs.at(-1);
  const facts = last && (await factsOf(call, { name, pack: last }));
  const over = facts && (await call.pipeline.openDigest(packs.map(sealedBefore)));
  return facts && facts.open.over === over ? { open: facts.open.items, readings: facts.open.readings } : undefined;
}

/** Returns the records of the issues that a pack replaces, oldest first: open items in them keep their names. */
async function earlierIssues(
  call: Call,
  name: LedgerName,
  { summary }: KeptPack,
): Promise<{ record: unknown; issuedAt: string }[]> {
  const { supersedes } = summary;
  const pack = supersedes
    ? orUnavailable(await call.world.archive.ledger(name, (ledger) => ledger.pack(supersedes)))
    : null;
  if (!pack) return [];
  const record = await sealedJson<unknown>(call, { name, pack }, pack.recordSha256);
  return [...(await earlierIssues(call, name, pack)), { record, issuedAt: pack.summary.issuedAt }];
}

function sealedBefore({ summary, recordSha256, withdrawal }: KeptPack): SealedBefore {
  return { pack: summary.pack, issuedAt: summary.issuedAt, recordSha256, isWithdrawn: withdrawal !== null };
}
