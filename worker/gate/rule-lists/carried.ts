import type { Rule } from '../rule.ts';
import { bindingLimitExtended } from '../rules/binding-limit-extended.ts';
import { carriedContradicted } from '../rules/carried-contradicted.ts';
import { carriedEntryUnfit } from '../rules/carried-entry-unfit.ts';
import { carriedIncomplete } from '../rules/carried-incomplete.ts';
import { carriedUnmatched } from '../rules/carried-unmatched.ts';
import { laterPackStands } from '../rules/later-pack-stands.ts';
import { openItemOverdue } from '../rules/open-item-overdue.ts';
import { openItemPutOff } from '../rules/open-item-put-off.ts';
import { openItemShort } from '../rules/open-item-short.ts';
import { openItemUnanswered } from '../rules/open-item-unanswered.ts';
import { openItemUncounted } from '../rules/open-item-uncounted.ts';
import { packWithdrawnUnreplaced } from '../rules/pack-withdrawn-unreplaced.ts';
import { watchedItemUnanswered } from '../rules/watched-item-unanswered.ts';

/** What earlier packs left open, and what became of them. */
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
  bindingLimitExtended,
  carriedUnmatched,
  packWithdrawnUnreplaced,
  laterPackStands,
];
