import type { OpenItem } from '../calc/open-items/open-item.ts';
import * as m from '../text/generated/messages.ts';
import { said } from '../text/message.ts';
import type { Hit, RuleInput } from './rule.ts';

/** Hits for items of earlier packs without an answer in the record. */
export function unansweredItems({ results }: RuleInput, isWanted: (item: OpenItem) => boolean): Hit[] {
  return results.open.unanswered.filter(isWanted).map(({ item = '', text }) => ({
    path: '/carried',
    sentence: said(m.unansweredItems_standsOpenRecordNot, { item, text }),
    data: { item },
  }));
}
