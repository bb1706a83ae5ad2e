import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const massEstimated: Rule = {
  code: 'MASS_ESTIMATED',
  severity: 'caution',
  meaning: 'The mass of an item put in is only estimated',
  remedy: phrase`Weigh it, or take the maker’s figure`,
  source: PRACTICE,
  check: ({ results, say }) =>
    results.change.changes.flatMap(({ change, path }): Hit[] => {
      const item = change.kind === 'replaced' ? change.by : change.kind === 'installed' ? change : undefined;
      if (item?.massSource !== 'estimated') return [];
      return [{ path, sentence: say.words`The mass of ${item.name} is only estimated`, data: { item: item.id } }];
    }),
};
