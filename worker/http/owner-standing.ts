import type { Aftermath, KeptPack } from '../archive/ledger/ledger-calls.ts';
import type { Printer } from '../units/print.ts';
import { sentence } from '../words/sentence.ts';

/** Whether a pack still holds, as its page says it first. */
interface Standing {
  isCurrent: boolean;
  headline: string;
  detail: string;
}

/**
 * The first thing that a reader must know: whether what follows still holds.
 *
 * @param withdrawnBy who withdrew it, by name
 */
export function standingOf(
  { pack, later, corrected }: { pack: KeptPack } & Aftermath,
  say: Printer,
  withdrawnBy = pack.withdrawal?.by ?? '',
): Standing {
  const { words } = say;
  const { withdrawal } = pack;
  if (withdrawal) {
    const detail = words`${withdrawnBy} withdrew this release on ${say.moment(withdrawal.at)}: ${sentence(withdrawal.reason)} Do not fly on it: ask the workshop.`;
    return { isCurrent: false, headline: words`Withdrawn`, detail };
  }
  if (later?.withdrawal) {
    const when = say.day(later.withdrawal.at);
    const detail = words`The later release ${later.summary.pack} was withdrawn on ${when}, and no release stands. Do not fly on this one, and do not load the aircraft by its figures: ask the workshop.`;
    return { isCurrent: false, headline: words`No release stands`, detail };
  }
  if (later) {
    const { issuedAt } = later.summary;
    const when = say.day(issuedAt);
    const detail = words`A later release of ${when} replaces this one. Do not load the aircraft by the figures below: ask the workshop for the link to ${later.summary.pack}.`;
    return { isCurrent: false, headline: words`Superseded`, detail };
  }
  const [changed] = corrected;
  if (changed) {
    const detail = changed.withdrawal
      ? words`${changed.summary.pack}, an earlier release that this one was worked out from, was withdrawn since: ${sentence(changed.withdrawal.reason)} Do not load the aircraft by the figures of this pack: ask the workshop.`
      : words`An earlier release that this one was worked out from was corrected since, by ${changed.summary.pack}. Do not load the aircraft by the figures of this pack: ask the workshop.`;
    return { isCurrent: false, headline: words`Worked out from figures that were corrected`, detail };
  }
  const { supersedes } = pack.summary;
  const detail = supersedes
    ? words`This is the newest issue. It replaces ${supersedes}, whose figures no longer hold.`
    : words`This is the newest release of the aircraft that the workshop has issued.`;
  return { isCurrent: true, headline: words`Released`, detail };
}
