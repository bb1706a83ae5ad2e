import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const bulletinUnassessed: Rule = {
  code: 'BULLETIN_UNASSESSED',
  severity: 'caution',
  meaning: 'A recommended bulletin that applies is open',
  remedy: phrase`Decide it: comply, or have the owner decline it`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    (visit.bulletins?.items ?? []).flatMap(({ id, kind, status, subject }, index): Hit[] =>
      kind === 'recommended' && status === 'open' && results.applicability[index] !== 'does-not-apply'
        ? [
            {
              path: ['bulletins', 'items', index, 'status'],
              sentence: say.words`${id}, ${subject}, is open`,
              data: { bulletin: id },
            },
          ]
        : [],
    ),
};
