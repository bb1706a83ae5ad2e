import { append, headOf } from './chain.ts';
import type { Restoration, RestoreOutcome } from './ledger-calls.ts';
import { enqueue } from './outbox.ts';
import { markWithdrawn, writePack } from './packs-table.ts';
import { writeVisit } from './visits-table.ts';

/** Returns why a ledger cannot be restored here, or that it was restored before. */
export function refusalToRestore(sql: SqlStorage, { entries }: Restoration): RestoreOutcome | undefined {
  const head = headOf(sql);
  if (head.seq === 0) return undefined;
  return head.digest === entries.at(-1)?.digest ? { kind: 'unchanged' } : { kind: 'not-empty' };
}

/** Writes a whole ledger into empty tables. Packs come in the order of sealing, so that they supersede one another. */
export function writeRestoration(sql: SqlStorage, { workshop, entries, visits, packs }: Restoration): RestoreOutcome {
  for (const entry of entries) append(sql, entry);
  for (const { record, ...state } of visits) writeVisit(sql, state, record);
  for (const kept of packs) {
    const { summary, previous, withdrawal, manifestSha256, pdfSha256, recordSha256, documentsSha256, factsSha256 } =
      kept;
    const digests = { manifestSha256, pdfSha256, recordSha256, documentsSha256, factsSha256 };
    const { pack, number, issue, visit, supersedes } = summary;
    writePack(sql, {
      place: { pack, number, issue, visit, before: [], ...(supersedes !== null && { supersedes }) },
      digests,
      summary,
      previous,
      isRestored: true,
    });
    if (withdrawal) markWithdrawn(sql, pack, withdrawal);
    enqueue(sql, workshop, pack);
  }
  return { kind: 'restored' };
}
