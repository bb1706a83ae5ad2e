import type { Visit } from '../../../record/visit.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const bulletinStatusUnfit: Rule = {
  code: 'BULLETIN_STATUS_UNFIT',
  severity: 'caution',
  meaning: 'The status of a bulletin does not fit what is stated of it',
  remedy: m.bulletinStatusUnfit_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, (bulletin) => {
      const sentence = misfit(bulletin);
      return sentence && { field: 'status', sentence, data: { bulletin: bulletin.id } };
    }),
};

type Bulletin = NonNullable<Visit['bulletins']>['items'][number];

function misfit({ id, status, doneOn, nextDueDate, nextDueHours }: Bulletin): Said | undefined {
  if (status === 'complied' && (nextDueDate !== undefined || nextDueHours !== undefined))
    return said(m.bulletinStatusUnfit_dueAgain, { id });
  const isUndone = status === 'open' || status === 'declined' || status === 'not-applicable';
  return isUndone && doneOn !== undefined
    ? said(m.bulletinStatusUnfit_done, { id, doneOn: figure.date(doneOn) })
    : undefined;
}
