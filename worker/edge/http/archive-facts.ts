import type { ArchiveFacts } from '../../core/core.ts';
import type { LedgerName } from '../archive/archive.ts';
import type { VisitAmongPacks } from '../archive/ledger/ledger-calls.ts';
import { orUnavailable } from './answer.ts';
import { openBefore } from './open-before.ts';
import type { Call } from './route.ts';

/** Returns the facts of the archive for the release check of a visit, without those of its files. */
export async function archiveFacts(
  call: Call,
  name: LedgerName,
  { before, after }: Pick<VisitAmongPacks, 'before' | 'after'>,
): Promise<ArchiveFacts> {
  const people = orUnavailable(await call.world.archive.workshop(name.workshop, (calls) => calls.people()));
  const last = before.findLast(({ withdrawal }) => withdrawal === null);
  const withdrawn = before.slice(last ? before.indexOf(last) + 1 : 0);
  const standing = after.filter(({ withdrawal }) => withdrawal === null);
  const namesOf = (packs: typeof before): string[] => packs.map(({ summary }) => summary.pack);
  return {
    ...(last && { lastPack: lastPack(last) }),
    withdrawnPacks: namesOf(withdrawn),
    laterPacks: namesOf(standing),
    ...(await openBefore(call, name, before)),
    people,
  };
}

function lastPack({ summary, recordSha256 }: VisitAmongPacks['before'][number]): NonNullable<ArchiveFacts['lastPack']> {
  const { pack, issuedAt, visit } = summary;
  return { pack, issuedAt, visit, recordSha256 };
}
