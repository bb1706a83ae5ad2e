import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const bindingLimitExtended: Rule = {
  code: 'BINDING_LIMIT_EXTENDED',
  severity: 'caution',
  meaning: 'A limit that the authority or the maker set is given more time',
  remedy: phrase`Say who allowed it and where that stands: an authority’s approval, or the maker’s`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    results.open.bindingExtended.map((index) => {
      const { item = '' } = visit.carried?.[index] ?? {};
      return {
        path: ['carried', index],
        sentence: say.words`${item}, a limit of the authority or the maker, is given more time`,
        data: { item },
      };
    }),
};
