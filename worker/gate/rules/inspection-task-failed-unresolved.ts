import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const inspectionTaskFailedUnresolved: Rule = {
  code: 'INSPECTION_TASK_FAILED_UNRESOLVED',
  severity: 'blocks',
  meaning: 'A task failed and no settled finding answers for it',
  remedy: phrase`Rectify it, or link the finding that settles it`,
  source: read('14 CFR 43.11 (list of discrepancies)'),
  check: ({ visit, say }) =>
    (visit.inspection?.tasks ?? []).flatMap(({ id, text, result, finding: answer }, index): Hit[] => {
      if (result !== 'failed') return [];
      const finding = visit.findings?.find((known) => known.id === answer);
      if (finding?.disposition === 'rectified' || finding?.disposition === 'deferred') return [];
      return [
        {
          path: ['inspection', 'tasks', index],
          sentence: say.words`Task ${id}, ${text}, failed and no rectified or deferred finding answers for it`,
          data: { task: id },
        },
      ];
    }),
};
