import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const secondPersonSame: Rule = {
  code: 'SECOND_PERSON_SAME',
  severity: 'blocks',
  meaning: 'The second inspection was done by the person who did the task',
  remedy: m.secondPersonSame_remedy,
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit }) =>
    hitsIn(['inspection', 'tasks'], visit.inspection?.tasks, (task) => {
      const second = task.secondInspection;
      if (!second || second.by !== task.by) return undefined;
      return {
        field: ['secondInspection', 'by'],
        sentence: said(m.secondPersonSame_taskDoneInspectedSame, { task: task.id }),
        data: { task: task.id, person: second.by },
      };
    }),
};
