import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { itemReferences } from '../../item-references.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const itemNotAboard: Rule = {
  code: 'ITEM_NOT_ABOARD',
  severity: 'blocks',
  meaning:
    'Battery, source, load, antenna, device, test or connector belongs to an item that was removed or struck off',
  remedy: m.itemNotAboard_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { before, after } = results.change;
    const aboard = new Set(after.map(({ id }) => id));
    return hits(itemReferences(visit), ({ value, path }) => {
      const left = before.find(({ id }) => id === value);
      if (!left || aboard.has(value)) return undefined;
      return {
        path,
        sentence: said(m.itemNotAboard_itemLeft, { item: value, name: left.name }),
        data: { item: value },
      };
    });
  },
};
