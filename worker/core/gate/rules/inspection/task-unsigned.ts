import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const taskUnsigned: Rule = {
  code: 'TASK_UNSIGNED',
  severity: 'blocks',
  meaning: 'A task is entered as done, but not by whom and when',
  remedy: m.taskUnsigned_remedy,
  source: read('14 CFR 43.9(a)(3) as summarised (name of the performer)'),
  check: ({ visit }) =>
    (visit.inspection?.tasks ?? []).flatMap(({ id, result, by, at }, index): Hit[] => {
      if (result === 'open' || result === 'not-applicable' || (by && at)) return [];
      return [
        {
          path: ['inspection', 'tasks', index],
          sentence: said(m.taskUnsigned_taskNotSayWho, { id }),
          data: { task: id },
        },
      ];
    }),
};
