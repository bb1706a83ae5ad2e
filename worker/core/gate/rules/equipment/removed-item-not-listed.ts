import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const removedItemNotListed: Rule = {
  code: 'REMOVED_ITEM_NOT_LISTED',
  severity: 'blocks',
  meaning: 'An item was taken out that the equipment list does not have',
  remedy: m.correctLineNumberEnter,
  source: read('FAA-H-8083-30, equipment change'),
  check: ({ results }) =>
    results.change.changes.flatMap(({ modification, change, listed, path }): Hit[] => {
      if (change.kind !== 'removed' && change.kind !== 'replaced') return [];
      if (listed) return [];
      return [
        {
          path: [...path, 'item'],
          sentence: said(m.removedItemNotListed_modificationTakesOutItem, { modification, item: change.item }),
          data: { item: change.item },
        },
      ];
    }),
};
