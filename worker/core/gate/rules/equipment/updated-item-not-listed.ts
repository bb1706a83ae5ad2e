import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const updatedItemNotListed: Rule = {
  code: 'UPDATED_ITEM_NOT_LISTED',
  severity: 'blocks',
  meaning: 'An item was updated in place that the equipment list does not have',
  remedy: m.correctLineNumberEnter,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.change.changes, ({ change, listed, path }) => {
      if (change.kind !== 'updated' || listed) return undefined;
      return {
        path: [...path, 'item'],
        sentence: said(m.updatedItemNotListed_updatedButNotListed, { item: change.item }),
        data: { item: change.item },
      };
    }),
};
