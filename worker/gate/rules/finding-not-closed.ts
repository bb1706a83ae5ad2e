import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const findingNotClosed: Rule = {
  code: 'FINDING_NOT_CLOSED',
  severity: 'blocks',
  meaning: 'A finding is said to be rectified, but not by whom, when or how',
  remedy: phrase`Enter what was done, who closed it and when`,
  source: read('14 CFR 43.9(a) as summarised'),
  check: ({ visit, say }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, closedBy, closedAt, action }, index): Hit[] => {
      if (disposition !== 'rectified' || (closedBy && closedAt && action)) return [];
      return [
        {
          path: ['findings', index],
          sentence: say.words`Finding ${id} is rectified, but what was done, by whom or when is missing`,
          data: { finding: id },
        },
      ];
    }),
};
