import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { comesSoon } from '../../comes-soon.ts';
import { dueFigures } from '../../due-figures.ts';
import { heldItems, isPastLimit } from '../../held-items.ts';
import { hits } from '../../hits.ts';
import { isOfWeighingAlone } from '../../of-weighing-alone.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const openItemShort: Rule = {
  code: 'OPEN_ITEM_SHORT',
  severity: 'caution',
  meaning: 'An item from an earlier pack comes due soon, or is overdue without blocking',
  remedy: m.planNow,
  source: PRACTICE,
  check: (input) => {
    const isWeighing = isOfWeighingAlone(input);
    return hits(heldItems(input), (due) => {
      const { item = '', text } = due;
      const { figures, data } = dueFigures(due);
      const hit = (sentence: Said): Hit => ({ path: '/carried', sentence, data: { item, ...data } });
      if (isPastLimit(due) && !isWeighing) return undefined;
      if (due.isOverdue) return hit(said(m.overdue2, { item, text, figures }));
      return comesSoon(due) ? hit(said(m.openItemShort_comesDueSoon, { item, text, figures })) : undefined;
    });
  },
};
