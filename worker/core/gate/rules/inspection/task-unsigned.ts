import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const taskUnsigned: Rule = {
  code: 'TASK_UNSIGNED',
  severity: 'blocks',
  meaning: 'A task is done, but person or time is missing; or nobody decided that it does not apply',
  remedy: m.taskUnsigned_remedy,
  source: read('14 CFR 43.9(a)(3) (name of the performer)'),
  check: ({ visit }) =>
    hitsIn(['inspection', 'tasks'], visit.inspection?.tasks, ({ id, result, by, at }) => {
      if (result === 'open' || (by && (at || result === 'not-applicable'))) return undefined;
      return {
        sentence:
          result === 'not-applicable'
            ? said(m.taskUnsigned_notApplicable, { id })
            : said(m.taskUnsigned_taskNotSayWho, { id }),
        data: { task: id },
      };
    }),
};
