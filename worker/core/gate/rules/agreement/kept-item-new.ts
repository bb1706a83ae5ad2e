import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { fittedItems } from '../../fitted-items.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const keptItemNew: Rule = {
  code: 'KEPT_ITEM_NEW',
  severity: 'blocks',
  meaning: 'A load or antenna is not entered as added, but its item was fitted at this visit',
  remedy: m.keptItemNew_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const fitted = new Set(fittedItems(results).map(({ item }) => item.id));
    const ofNew = ({ name, item, change }: { name: string; item?: string | undefined; change: string }) =>
      change !== 'added' && item !== undefined && fitted.has(item)
        ? { field: 'change', sentence: said(m.keptItemNew_itemIsNew, { name, item }), data: { item } }
        : undefined;
    return [
      ...hitsIn(['electrical', 'loads'], visit.electrical?.loads, ofNew),
      ...hitsIn(['antennas', 'items'], visit.antennas?.items, ofNew),
    ];
  },
};
