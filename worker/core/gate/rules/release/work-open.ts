import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const workOpen: Rule = {
  code: 'WORK_OPEN',
  severity: 'blocks',
  meaning: 'A job of the worksheet is not finished',
  remedy: m.workOpen_remedy,
  source: read('14 CFR 43.9; ML.A.801 (incomplete maintenance)'),
  check: ({ visit }) =>
    hitsIn(['worksheet'], visit.worksheet, ({ id, text, state }) => {
      if (state === 'done' || state === 'declined') return undefined;
      return {
        field: 'state',
        sentence: said(m.workOpen_job, {
          id,
          text,
          hand: state === 'in-hand' ? said(m.workOpen_hand) : said(m.workOpen_waiting),
        }),
        data: { job: id, state },
      };
    }),
};
