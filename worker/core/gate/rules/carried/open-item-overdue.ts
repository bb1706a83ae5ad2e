import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { heldItems, isPastLimit } from '../../held-items.ts';
import { isOfWeighingAlone } from '../../of-weighing-alone.ts';
import { type Rule, read } from '../../rule.ts';

export const openItemOverdue: Rule = {
  code: 'OPEN_ITEM_OVERDUE',
  severity: 'blocks',
  meaning:
    'Something that binds and that an earlier pack left open is past its limit, and this record has no entry of it',
  remedy: m.openItemOverdue_remedy,
  source: read('ML.A.403 (within the stated limit); 14 CFR 91.417 (next due of recurring directives)'),
  check: (input) => {
    // A weighing says nothing of airworthiness.
    if (isOfWeighingAlone(input)) return [];
    return heldItems(input)
      .filter(isPastLimit)
      .map(({ item = '', text }) => ({
        path: '/carried',
        sentence: said(m.overdue2, { item, text }),
        data: { item },
      }));
  },
};
