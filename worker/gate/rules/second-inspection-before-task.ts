import { instantOf, printMoment } from '../../units/calendar.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const secondInspectionBeforeTask: Rule = {
  code: 'SECOND_INSPECTION_BEFORE_TASK',
  severity: 'blocks',
  meaning: 'A second inspection is older than the task it inspects',
  remedy: 'Inspect again after the last disturbance',
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit }) =>
    (visit.inspection?.tasks ?? []).flatMap((task, index): Hit[] => {
      const second = task.secondInspection;
      if (!second || !task.at || instantOf(second.at) >= instantOf(task.at)) return [];
      return [
        {
          path: ['inspection', 'tasks', index, 'secondInspection', 'at'],
          sentence: `Task ${task.id} was done ${printMoment(task.at)}, after its second inspection ${printMoment(second.at)}`,
          data: { task: task.id },
        },
      ];
    }),
};
