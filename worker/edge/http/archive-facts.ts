import type { ArchiveFacts } from '../../core/core.ts';
import type { LedgerName } from '../archive/archive.ts';
import type { VisitAmongPacks } from '../archive/ledger/ledger-calls.ts';
import { ArchiveDamaged, orUnavailable } from './answer.ts';
import { openBefore } from './open-before.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import { sealedForm } from './sealed-record.ts';
import { standingFacts } from './standing.ts';

/**
 * Returns the facts of the archive for the release check of a visit, without those of its files.
 *
 * @param value record of any shape
 */
export async function archiveFacts(
  call: Call,
  name: LedgerName,
  { own, before, after }: Pick<VisitAmongPacks, 'own' | 'before' | 'after'>,
  value: unknown,
): Promise<ArchiveFacts> {
  const people = await peopleOf(call);
  const last = before.findLast(({ withdrawal }) => withdrawal === null);
  const withdrawn = before.slice(last ? before.indexOf(last) + 1 : 0);
  const standing = after.filter(({ withdrawal }) => withdrawal === null);
  const namesOf = (packs: typeof before): string[] => packs.map(({ summary }) => summary.pack);
  const past = await openBefore(call, name, before);
  return {
    ...(last && { lastPack: lastPack(last) }),
    withdrawnPacks: namesOf(withdrawn),
    laterPacks: namesOf(standing),
    ...past,
    ...(await standingFacts(call, value, last && { owned: { name, pack: last }, past })),
    people,
    ...(own && { earlierIssue: await earlierIssue(call, { name, pack: own }) }),
  };
}

/** Returns the people table of the caller's workshop. */
export async function peopleOf({ world, caller }: Call) {
  return orUnavailable(await world.archive.workshop(caller.workshop, (calls) => calls.people()));
}

function lastPack({ summary, recordSha256 }: VisitAmongPacks['before'][number]): NonNullable<ArchiveFacts['lastPack']> {
  const { pack, issuedAt, visit } = summary;
  return { pack, issuedAt, visit, recordSha256 };
}

async function earlierIssue(call: Call, owned: OwnedPack): Promise<NonNullable<ArchiveFacts['earlierIssue']>> {
  const { pack, issuedAt } = owned.pack.summary;
  // A damaged file of the old issue must not prevent its correction: then everything counts as changed.
  const record = await sealedForm(call, owned).catch((error: unknown) => {
    if (error instanceof ArchiveDamaged) return null;
    throw error;
  });
  return { pack, issuedAt, record };
}
