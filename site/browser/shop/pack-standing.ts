import type { Pack } from '../../../worker/client/client.ts';
import { printDate } from '../../../worker/core/text/dates.ts';
import { sentence } from '../../../worker/core/text/sentence.ts';
import { dateOf } from '../../../worker/core/units/calendar.ts';

/** Status of a pack. Only the current pack may be used. */
export interface PackStanding {
  kind: 'stands' | 'corrected' | 'superseded' | 'withdrawn';
  /** Follows the name of the pack, as `released 5 Nov 2026 by Jonas Veldt`. */
  words: string;
}

/**
 * Returns the status of a pack among all packs of its aircraft, in the order that its owner sees: withdrawn, replaced
 * by a later issue or a later pack, based on figures that were corrected since, or none of these.
 *
 * @param packs all packs of the aircraft, newest first
 */
export function packStanding(pack: Pack, packs: readonly Pack[]): PackStanding {
  const { supersededBy, withdrawal } = pack;
  if (withdrawal) return { kind: 'withdrawn', words: withdrawnWords(withdrawal, supersededBy) };
  const issue = packs.find((other) => other.pack === supersededBy);
  if (supersededBy !== null)
    return { kind: 'superseded', words: `superseded by issue ${supersededBy}${issue?.withdrawal ? WITHDRAWN : ''}` };
  const [newest] = packs;
  if (newest && newest.number > pack.number) {
    const state = newest.withdrawal ? `${WITHDRAWN}: no current release` : '';
    return { kind: 'superseded', words: `superseded by the later pack ${newest.pack}${state}` };
  }
  const released = `released ${dayOf(pack.issuedAt)} by ${pack.releasedBy}`;
  const changed = packs.findLast((other) => isCorrected(other, pack));
  return changed
    ? { kind: 'corrected', words: `${released}, ${correctedWords(changed)}` }
    : { kind: 'stands', words: released };
}

/** Returns packs in the order in which the service lists them. */
export const newestFirst = (packs: readonly Pack[]): Pack[] =>
  [...packs].sort((a, b) => b.number - a.number || b.issue - a.issue);

/** Returns the status of an aircraft in one line. */
export function aircraftStanding(packs: readonly Pack[]): { words: string; isGood: boolean } {
  const [newest] = packs;
  if (!newest) return { words: 'No pack was sealed yet.', isGood: false };
  const { kind, words } = packStanding(newest, packs);
  if (kind === 'withdrawn') return { words: `No current release: ${newest.pack} was ${words}`, isGood: false };
  return { words: `${newest.pack}, ${words}`, isGood: kind === 'stands' };
}

/**
 * Returns the pack from which the service counts what is due: the newest that was not withdrawn, or the newest if all
 * were.
 *
 * @param packs all packs of the aircraft, newest first
 */
export function packCountedFrom(packs: readonly Pack[]): Pack | undefined {
  const issues = packs.filter(({ supersededBy }) => supersededBy === null);
  return issues.find(({ withdrawal }) => withdrawal === null) ?? issues[0];
}

const WITHDRAWN = ', which was withdrawn';

const dayOf = (moment: string): string => printDate(dateOf(moment));

function withdrawnWords({ at, by, reason }: NonNullable<Pack['withdrawal']>, supersededBy: string | null): string {
  const words = `withdrawn ${dayOf(at)} by ${by}: ${reason}`;
  return supersededBy === null ? words : `${sentence(words)} Superseded by issue ${supersededBy}`;
}

/** Whether an earlier pack was reissued or withdrawn after a later pack with its figures was sealed. */
function isCorrected(earlier: Pack, { number, issuedAt }: Pack): boolean {
  if (earlier.number >= number || earlier.supersededBy !== null) return false;
  return earlier.issuedAt > issuedAt || (earlier.withdrawal !== null && earlier.withdrawal.at > issuedAt);
}

function correctedWords({ pack, withdrawal }: Pack): string {
  const what = withdrawal ? `from ${pack}, which was withdrawn since` : `from figures that ${pack} corrected since`;
  return `and calculated ${what}: do not load the aircraft by it, issue it again`;
}
