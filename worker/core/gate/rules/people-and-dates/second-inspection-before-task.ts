import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const secondInspectionBeforeTask: Rule = {
  code: 'SECOND_INSPECTION_BEFORE_TASK',
  severity: 'blocks',
  meaning: 'A second inspection is older than the task it inspects',
  remedy: m.secondInspectionBeforeTask_remedy,
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit }) =>
    hitsIn(['inspection', 'tasks'], visit.inspection?.tasks, (task) => {
      const second = task.secondInspection;
      if (!second || !task.at || instantOf(second.at) >= instantOf(task.at)) return undefined;
      return {
        field: ['secondInspection', 'at'],
        sentence: said(m.secondInspectionBeforeTask_taskDoneAfterSecond, {
          task: task.id,
          at: figure.timestamp(task.at),
          at2: figure.timestamp(second.at),
        }),
        data: { task: task.id },
      };
    }),
};
