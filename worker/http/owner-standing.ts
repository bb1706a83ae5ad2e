import type { Aftermath, KeptPack } from '../archive/ledger/ledger-calls.ts';
import type { Standing } from '../pack/views/owner-page.ts';
import type { Printer } from '../text/print.ts';
import { sentence } from '../words/sentence.ts';

/**
 * The first thing that a reader must know: whether what follows still holds.
 *
 * @param told who withdrew it, by name, and when the page is read, as it is printed
 */
export function standingOf(
  { pack, later, corrected }: { pack: KeptPack } & Aftermath,
  say: Printer,
  { withdrawnBy, readOn }: { withdrawnBy: string; readOn: string } = { withdrawnBy: '', readOn: '' },
): Standing {
  const { words } = say;
  const { withdrawal } = pack;
  if (withdrawal) {
    const detail = words`${withdrawnBy} withdrew this release on ${say.moment(withdrawal.at)}: ${sentence(withdrawal.reason)} Do not fly on it: ask the workshop.`;
    return { isCurrent: false, headline: words`Withdrawn`, detail, detailThen: '' };
  }
  if (later?.withdrawal) {
    const when = say.day(later.withdrawal.at);
    const detail = words`The later release ${later.summary.pack} was withdrawn on ${when}, and no release stands. Do not fly on this one, and do not load the aircraft by its figures: ask the workshop.`;
    return { isCurrent: false, headline: words`No release stands`, detail, detailThen: '' };
  }
  if (later && Date.parse(later.summary.issuedAt) < Date.parse(pack.summary.issuedAt)) {
    const detail = words`This corrects an earlier release. ${later.summary.pack} was released before it, and was worked out from the figures that it corrects. Do not load the aircraft by the figures of either: ask the workshop to issue ${later.summary.pack} anew.`;
    return { isCurrent: false, headline: words`A later release must be corrected too`, detail, detailThen: '' };
  }
  if (later) {
    const { issuedAt } = later.summary;
    const when = say.day(issuedAt);
    const detail = words`A later release of ${when} replaces this one. Do not load the aircraft by the figures below: ask the workshop for the link to ${later.summary.pack}.`;
    return { isCurrent: false, headline: words`Superseded`, detail, detailThen: '' };
  }
  const [changed] = corrected;
  if (changed) {
    const detail = changed.withdrawal
      ? words`${changed.summary.pack}, an earlier release that this one was worked out from, was withdrawn since: ${sentence(changed.withdrawal.reason)} Do not load the aircraft by the figures of this pack: ask the workshop.`
      : words`An earlier release that this one was worked out from was corrected since, by ${changed.summary.pack}. Do not load the aircraft by the figures of this pack: ask the workshop.`;
    return { isCurrent: false, headline: words`Worked out from figures that were corrected`, detail, detailThen: '' };
  }
  const { supersedes } = pack.summary;
  const [detail, detailThen] = supersedes
    ? [
        words`This is the newest issue. It replaces ${supersedes}, whose figures no longer hold.`,
        words`On ${readOn} this was the newest issue. It replaces ${supersedes}, whose figures no longer hold.`,
      ]
    : [
        words`This is the newest release of the aircraft that the workshop has issued.`,
        words`On ${readOn} this was the newest release of the aircraft that the workshop had issued.`,
      ];
  return { isCurrent: true, headline: words`Released`, detail, detailThen };
}
