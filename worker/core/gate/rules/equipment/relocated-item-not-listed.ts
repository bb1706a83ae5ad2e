import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const relocatedItemNotListed: Rule = {
  code: 'RELOCATED_ITEM_NOT_LISTED',
  severity: 'blocks',
  meaning: 'An item was moved that the equipment list does not have',
  remedy: m.correctLineNumberEnter,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.change.changes, ({ change, listed, path }) => {
      if (change.kind !== 'relocated' || listed) return undefined;
      return {
        path: [...path, 'item'],
        sentence: said(m.relocatedItemNotListed_itemMovedButEquipment, { item: change.item }),
        data: { item: change.item },
      };
    }),
};
