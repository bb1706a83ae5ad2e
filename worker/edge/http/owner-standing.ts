import type { Standing } from '../../core/pack/views/owner-page.ts';
import type { Formatter } from '../../core/text/formatter.ts';
import * as m from '../../core/text/generated/messages.ts';
import { sentence } from '../../core/text/sentence.ts';
import type { Aftermath, KeptPack } from '../archive/ledger/ledger-calls.ts';

// What is no longer valid is never shown first: behind a link to a withdrawn or superseded pack, the summary is a
// closed document among the others. A date that has passed since the release is shown next to the state, not instead
// of it: the work may have been done elsewhere.

/**
 * Returns the status of a pack, which a reader must see first: whether it is still current.
 *
 * @param told name of the person who withdrew it, and the time of reading, as printed
 */
export function standingOf(
  { pack, later, corrected }: { pack: KeptPack } & Aftermath,
  fmt: Formatter,
  { withdrawnBy, readOn }: { withdrawnBy: string; readOn: string } = { withdrawnBy: '', readOn: '' },
): Standing {
  const { text } = fmt;
  const { withdrawal } = pack;
  if (withdrawal) {
    const detail = text(m.ownerStanding_withdrewReleaseNotFly, {
      withdrawnBy,
      at: fmt.timestamp(withdrawal.at),
      sentence: sentence(withdrawal.reason),
    });
    return { isCurrent: false, headline: text(m.ownerStanding_withdrawn), detail, detailThen: '' };
  }
  if (later?.withdrawal) {
    const when = fmt.day(later.withdrawal.at);
    const detail = text(m.ownerStanding_laterReleaseWithdrawnNo, { pack: later.summary.pack, when });
    return { isCurrent: false, headline: text(m.ownerStanding_noReleaseStands), detail, detailThen: '' };
  }
  if (later && Date.parse(later.summary.issuedAt) < Date.parse(pack.summary.issuedAt)) {
    const detail = text(m.ownerStanding_correctsEarlierReleaseReleased, {
      pack: later.summary.pack,
      pack2: later.summary.pack,
    });
    return { isCurrent: false, headline: text(m.ownerStanding_laterReleaseMustCorrected), detail, detailThen: '' };
  }
  if (later) {
    const { issuedAt } = later.summary;
    const when = fmt.day(issuedAt);
    const detail = text(m.ownerStanding_laterReleaseReplacesOne, { when, pack: later.summary.pack });
    return { isCurrent: false, headline: text(m.ownerStanding_superseded), detail, detailThen: '' };
  }
  const [changed] = corrected;
  if (changed) {
    const detail = changed.withdrawal
      ? text(m.ownerStanding_earlierReleaseOneWorked, {
          pack: changed.summary.pack,
          sentence: sentence(changed.withdrawal.reason),
        })
      : text(m.ownerStanding_earlierReleaseOneWorkedOut, { pack: changed.summary.pack });
    return { isCurrent: false, headline: text(m.ownerStanding_workedOutFiguresCorrected), detail, detailThen: '' };
  }
  const { supersedes } = pack.summary;
  const [detail, detailThen] = supersedes
    ? [
        text(m.ownerStanding_newestIssueReplacesWhose, { supersedes }),
        text(m.ownerStanding_newestIssueReplacesWhoseFigures, { readOn, supersedes }),
      ]
    : [
        text(m.ownerStanding_newestReleaseAircraftWorkshop),
        text(m.ownerStanding_newestReleaseAircraftWorkshopIssued, { readOn }),
      ];
  return { isCurrent: true, headline: text(m.released), detail, detailThen };
}
