import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const carriedUnmatched: Rule = {
  code: 'CARRIED_UNMATCHED',
  severity: 'caution',
  meaning: 'The record answers for something that no earlier pack of this workshop left open, or answers for it twice',
  remedy: phrase`Name the item as the due list of the aircraft does, and once`,
  source: PRACTICE,
  check: ({ visit, results, facts, say }) =>
    // Without an archive nothing is known of what stands open.
    (facts.open === undefined ? [] : results.open.unmatched).map((index) => {
      const item = visit.carried?.[index]?.item ?? '';
      return {
        path: ['carried', index, 'item'],
        sentence: say.words`${item} does not stand open, or is answered for before`,
        data: { item },
      };
    }),
};
