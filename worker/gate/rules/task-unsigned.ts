import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const taskUnsigned: Rule = {
  code: 'TASK_UNSIGNED',
  severity: 'blocks',
  meaning: 'A task is entered as done, but not by whom and when',
  remedy: phrase`Have the person who did it sign, with the time`,
  source: read('14 CFR 43.9(a)(3) as summarised (name of the performer)'),
  check: ({ visit, say }) =>
    (visit.inspection?.tasks ?? []).flatMap(({ id, result, by, at }, index): Hit[] => {
      if (result === 'open' || result === 'not-applicable' || (by && at)) return [];
      return [
        {
          path: ['inspection', 'tasks', index],
          sentence: say.words`Task ${id} does not say who did it and when`,
          data: { task: id },
        },
      ];
    }),
};
