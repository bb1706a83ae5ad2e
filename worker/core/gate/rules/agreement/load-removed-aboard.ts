import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const loadRemovedAboard: Rule = {
  code: 'LOAD_REMOVED_ABOARD',
  severity: 'caution',
  meaning: 'A load is entered as removed, but its item is still aboard and no other load counts it',
  remedy: m.loadRemovedAboard_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { loads = [] } = visit.electrical ?? {};
    const counted = new Set(loads.filter(({ change }) => change !== 'removed').map(({ item }) => item));
    return hitsIn(['electrical', 'loads'], loads, ({ name, item, change }) => {
      const aboard = results.change.after.find(({ id }) => id === item);
      if (change !== 'removed' || !aboard || counted.has(item)) return undefined;
      return {
        field: 'change',
        sentence: said(m.loadRemovedAboard_itemStillAboard, { name, item: aboard.id, itemName: aboard.name }),
        data: { item: aboard.id },
      };
    });
  },
};
