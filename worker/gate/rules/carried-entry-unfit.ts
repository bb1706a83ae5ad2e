import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const carriedEntryUnfit: Rule = {
  code: 'CARRIED_ENTRY_UNFIT',
  severity: 'blocks',
  meaning:
    'An open item is extended by an entry of another kind or without its limit, or superseded by one that binds less, has no limit or is the item itself',
  remedy: phrase`Name an entry of the same kind with a limit, or one that binds as much`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    results.open.unfit.map((index) => {
      const { item = '', evidence = '' } = visit.carried?.[index] ?? {};
      return {
        path: ['carried', index, 'evidence'],
        sentence: say.words`${item} cannot go on as “${evidence}”, which is of another kind, binds less or lacks a limit`,
        data: { item },
      };
    }),
};
