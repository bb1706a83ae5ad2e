import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const findingWithoutDisposition: Rule = {
  code: 'FINDING_WITHOUT_DISPOSITION',
  severity: 'blocks',
  meaning: 'A finding is open',
  remedy: phrase`Rectify, defer with a limit, or have the owner decline it`,
  source: read('ML.A.403; 14 CFR 43.11'),
  check: ({ visit, say }) =>
    (visit.findings ?? []).flatMap(({ id, text, disposition }, index): Hit[] => {
      if (disposition && disposition !== 'open') return [];
      return [
        {
          path: ['findings', index, 'disposition'],
          sentence: say.words`Finding ${id}, ${text}, has no disposition`,
          data: { finding: id },
        },
      ];
    }),
};
