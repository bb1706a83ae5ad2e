import type { Rule } from '../../rule.ts';
import { bindingLimitExtended } from './binding-limit-extended.ts';
import { carriedContradicted } from './carried-contradicted.ts';
import { carriedEntryUnfit } from './carried-entry-unfit.ts';
import { carriedIncomplete } from './carried-incomplete.ts';
import { carriedUnmatched } from './carried-unmatched.ts';
import { flightTestClosedUnflown } from './flight-test-closed-unflown.ts';
import { laterPackStands } from './later-pack-stands.ts';
import { openItemOverdue } from './open-item-overdue.ts';
import { openItemPutOff } from './open-item-put-off.ts';
import { openItemShort } from './open-item-short.ts';
import { openItemUnanswered } from './open-item-unanswered.ts';
import { openItemUncounted } from './open-item-uncounted.ts';
import { packWithdrawnUnreplaced } from './pack-withdrawn-unreplaced.ts';
import { standingFileMoved } from './standing-file-moved.ts';
import { standingFileUnproved } from './standing-file-unproved.ts';
import { standingKeyUnknown } from './standing-key-unknown.ts';
import { standingReasonUnmatched } from './standing-reason-unmatched.ts';
import { standingSystemChanged } from './standing-system-changed.ts';
import { standingValueChanged } from './standing-value-changed.ts';
import { watchedItemUnanswered } from './watched-item-unanswered.ts';

/** Open items of earlier packs, and their answers. */
export const CARRIED_RULES: readonly Rule[] = [
  openItemUnanswered,
  watchedItemUnanswered,
  openItemPutOff,
  openItemOverdue,
  openItemShort,
  openItemUncounted,
  carriedIncomplete,
  carriedEntryUnfit,
  carriedContradicted,
  flightTestClosedUnflown,
  bindingLimitExtended,
  carriedUnmatched,
  standingFileMoved,
  standingFileUnproved,
  standingKeyUnknown,
  standingValueChanged,
  standingSystemChanged,
  standingReasonUnmatched,
  packWithdrawnUnreplaced,
  laterPackStands,
];
