import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const removedItemNotListed: Rule = {
  code: 'REMOVED_ITEM_NOT_LISTED',
  severity: 'blocks',
  meaning: 'An item was removed that the equipment list does not have',
  remedy: m.correctLineNumberEnter,
  source: read('FAA-H-8083-30, equipment change'),
  check: ({ results }) =>
    hits(results.change.changes, ({ modification, change, listed, path }) => {
      if (change.kind !== 'removed' && change.kind !== 'replaced') return undefined;
      if (listed) return undefined;
      return {
        path: [...path, 'item'],
        sentence: said(m.removedItemNotListed_modificationTakesOutItem, { modification, item: change.item }),
        data: { item: change.item },
      };
    }),
};
