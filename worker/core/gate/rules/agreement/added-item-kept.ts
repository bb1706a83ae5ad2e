import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { fittedItems } from '../../fitted-items.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const addedItemKept: Rule = {
  code: 'ADDED_ITEM_KEPT',
  severity: 'caution',
  meaning: 'A load or antenna is entered as added, but its item was aboard before this visit',
  remedy: m.addedItemKept_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const fitted = new Set(fittedItems(results).map(({ item }) => item.id));
    const before = new Set(visit.baseline?.equipment?.map(({ id }) => id));
    const ofOld = ({ name, item, change }: { name: string; item?: string | undefined; change: string }) =>
      change === 'added' && item !== undefined && before.has(item) && !fitted.has(item)
        ? { field: 'change', sentence: said(m.addedItemKept_wasAboard, { name, item }), data: { item } }
        : undefined;
    return [
      ...hitsIn(['electrical', 'loads'], visit.electrical?.loads, ofOld),
      ...hitsIn(['antennas', 'items'], visit.antennas?.items, ofOld),
    ];
  },
};
