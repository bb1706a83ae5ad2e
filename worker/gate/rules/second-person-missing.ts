import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const secondPersonMissing: Rule = {
  code: 'SECOND_PERSON_MISSING',
  severity: 'blocks',
  meaning: 'A critical task has no second inspection',
  remedy: phrase`Have another person inspect it and enter who and when`,
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit, regime, say }) => {
    if (!regime.secondInspection.value) return [];
    return (visit.inspection?.tasks ?? []).flatMap((task, index): Hit[] => {
      if (!task.critical || task.secondInspection || task.result === 'not-applicable') return [];
      return [
        {
          path: ['inspection', 'tasks', index],
          sentence: say.words`Task ${task.id} is critical and has no second inspection`,
          data: { task: task.id },
        },
      ];
    });
  },
};
