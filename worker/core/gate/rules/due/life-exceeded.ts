import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
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
    results.due.filter(isPastLimit).map(({ id, item }) => ({
      path: lifePath(visit, id),
      sentence: said(m.overdue, { id, subject: item }),
      data: { life: id },
    })),
};
