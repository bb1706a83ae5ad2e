import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const bulletinDueBeforeDone: Rule = {
  code: 'BULLETIN_DUE_BEFORE_DONE',
  severity: 'blocks',
  meaning: 'The next due date of a recurring bulletin is not after the day on which it was done',
  remedy: m.bulletinDueBeforeDone_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, ({ id, subject, status, doneOn, nextDueDate }) => {
      if (status !== 'recurring' || doneOn === undefined || nextDueDate === undefined || nextDueDate > doneOn)
        return undefined;
      return {
        field: 'nextDueDate',
        sentence: said(m.bulletinDueBeforeDone_nextDueNotAfter, {
          id,
          subject,
          due: figure.date(nextDueDate),
          done: figure.date(doneOn),
        }),
        data: { bulletin: id, nextDueDate, doneOn },
      };
    }),
};
