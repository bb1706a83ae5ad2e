import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const lifeItemUnknown: Rule = {
  code: 'LIFE_ITEM_UNKNOWN',
  severity: 'caution',
  meaning: 'A line of the due list is about an item that is not aboard after this visit',
  remedy: m.lifeItemUnknown_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const aboard = new Set(results.change.after.map(({ id }) => id));
    return hitsIn(['lives', 'items'], visit.lives?.items, ({ id, item, of }) =>
      of === undefined || aboard.has(of)
        ? undefined
        : { field: 'of', sentence: said(m.lifeItemUnknown_notAboard, { id, item, of }), data: { item: of } },
    );
  },
};
