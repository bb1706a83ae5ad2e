import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const carriedContradicted: Rule = {
  code: 'CARRIED_CONTRADICTED',
  severity: 'blocks',
  meaning: 'The record says that an open item is closed, and still leaves it open',
  remedy: phrase`Correct the entry, or answer that the item is repeated or extended`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    results.open.contradicted.map((index) => {
      const { item = '' } = visit.carried?.[index] ?? {};
      return {
        path: ['carried', index, 'answer'],
        sentence: say.words`${item} is said to be closed, and the record still leaves it open`,
        data: { item },
      };
    }),
};
