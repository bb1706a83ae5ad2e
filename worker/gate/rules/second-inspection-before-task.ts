import { instantOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const secondInspectionBeforeTask: Rule = {
  code: 'SECOND_INSPECTION_BEFORE_TASK',
  severity: 'blocks',
  meaning: 'A second inspection is older than the task it inspects',
  remedy: phrase`Inspect again after the last disturbance`,
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit, say }) =>
    (visit.inspection?.tasks ?? []).flatMap((task, index): Hit[] => {
      const second = task.secondInspection;
      if (!second || !task.at || instantOf(second.at) >= instantOf(task.at)) return [];
      return [
        {
          path: ['inspection', 'tasks', index, 'secondInspection', 'at'],
          sentence: say.words`Task ${task.id} was done ${say.moment(task.at)}, after its second inspection ${say.moment(second.at)}`,
          data: { task: task.id },
        },
      ];
    }),
};
