import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dueFigures, pointOf } from '../../due-figures.ts';
import { isPastLimit } from '../../held-items.ts';
import { lifePath } from '../../life-path.ts';
import { type Rule, read } from '../../rule.ts';

export const lifeExceeded: Rule = {
  code: 'LIFE_EXCEEDED',
  severity: 'blocks',
  meaning: 'A binding item is overdue',
  remedy: m.beforeFlight,
  source: read('14 CFR 91.417; AMC M.A.305 (status of life-limited parts)'),
  check: ({ visit, results }) =>
    results.due.filter(isPastLimit).map((due) => {
      const { id, item } = due;
      const { figures, data } = dueFigures(pointOf(due));
      return {
        path: lifePath(visit, id),
        sentence: said(m.overdue, { id, subject: item, figures }),
        data: { life: id, ...data },
      };
    }),
};
