import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const secondPersonSame: Rule = {
  code: 'SECOND_PERSON_SAME',
  severity: 'blocks',
  meaning: 'The second inspection was done by the person who did the task',
  remedy: phrase`Have a different person inspect it`,
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit, say }) =>
    (visit.inspection?.tasks ?? []).flatMap((task, index): Hit[] => {
      const second = task.secondInspection;
      if (!second || second.by !== task.by) return [];
      return [
        {
          path: ['inspection', 'tasks', index, 'secondInspection', 'by'],
          sentence: say.words`Task ${task.id} was done and inspected by the same person`,
          data: { task: task.id, person: second.by },
        },
      ];
    }),
};
