import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const secondPersonMissing: Rule = {
  code: 'SECOND_PERSON_MISSING',
  severity: 'blocks',
  meaning: 'A critical task has no second inspection',
  remedy: m.secondPersonMissing_remedy,
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  values: ['secondInspection'],
  check: ({ visit, regime }) => {
    if (!regime.secondInspection.value) return undefined;
    return hitsIn(['inspection', 'tasks'], visit.inspection?.tasks, (task) => {
      if (!task.critical || task.secondInspection || task.result === 'not-applicable') return undefined;
      return {
        sentence: said(m.secondPersonMissing_taskCriticalNoSecond, { task: task.id }),
        data: { task: task.id },
      };
    });
  },
};
