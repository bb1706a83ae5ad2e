import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dueFigures } from '../../due-figures.ts';
import { heldItems, isPastLimit } from '../../held-items.ts';
import { isOfWeighingAlone } from '../../of-weighing-alone.ts';
import { type Rule, read } from '../../rule.ts';

export const openItemOverdue: Rule = {
  code: 'OPEN_ITEM_OVERDUE',
  severity: 'blocks',
  meaning: 'A binding item from an earlier pack is past its limit, and this record has no entry of it',
  remedy: m.openItemOverdue_remedy,
  source: read('ML.A.403 (within the stated limit); 14 CFR 91.417 (next due of recurring directives)'),
  check: (input) => {
    // A release of the weighing only makes no statement on airworthiness.
    if (isOfWeighingAlone(input)) return undefined;
    return heldItems(input)
      .filter(isPastLimit)
      .map((due) => {
        const { item = '', text } = due;
        const { figures, data } = dueFigures(due);
        return { path: '/carried', sentence: said(m.overdue2, { item, text, figures }), data: { item, ...data } };
      });
  },
};
