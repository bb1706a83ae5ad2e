import type { Rule } from '../rule.ts';
import { carriedIncomplete } from '../rules/carried-incomplete.ts';
import { carriedUnmatched } from '../rules/carried-unmatched.ts';
import { laterPackStands } from '../rules/later-pack-stands.ts';
import { openItemPutOff } from '../rules/open-item-put-off.ts';
import { openItemUnanswered } from '../rules/open-item-unanswered.ts';
import { packWithdrawnUnreplaced } from '../rules/pack-withdrawn-unreplaced.ts';
import { watchedItemUnanswered } from '../rules/watched-item-unanswered.ts';

/** What earlier packs left open, and what became of them. */
export const CARRIED_RULES: readonly Rule[] = [
  openItemUnanswered,
  watchedItemUnanswered,
  openItemPutOff,
  carriedIncomplete,
  carriedUnmatched,
  packWithdrawnUnreplaced,
  laterPackStands,
];
