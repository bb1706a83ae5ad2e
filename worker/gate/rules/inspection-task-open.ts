import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const inspectionTaskOpen: Rule = {
  code: 'INSPECTION_TASK_OPEN',
  severity: 'blocks',
  meaning: 'A task of the inspection is open',
  remedy: phrase`Do it, or say why it does not apply`,
  source: read('14 CFR 43.11; ML.A.302'),
  check: ({ visit, say }) =>
    (visit.inspection?.tasks ?? []).flatMap(({ id, text, result }, index): Hit[] =>
      result === 'open'
        ? [
            {
              path: ['inspection', 'tasks', index, 'result'],
              sentence: say.words`Task ${id}, ${text}, is open`,
              data: { task: id },
            },
          ]
        : [],
    ),
};
