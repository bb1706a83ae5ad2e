import type { ArchiveFacts } from '../../core/core.ts';
import type { LedgerName } from '../archive/archive.ts';
import type { VisitAmongPacks } from '../archive/ledger/ledger-calls.ts';
import { orUnavailable } from './answer.ts';
import { openBefore } from './open-before.ts';
import type { Call } from './route.ts';
import { standingFacts } from './standing.ts';

/**
 * Returns the facts of the archive for the release check of a visit, without those of its files.
 *
 * @param value record of any shape
 */
export async function archiveFacts(
  call: Call,
  name: LedgerName,
  { before, after }: Pick<VisitAmongPacks, 'before' | 'after'>,
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
