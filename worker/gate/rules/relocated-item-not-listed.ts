import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const relocatedItemNotListed: Rule = {
  code: 'RELOCATED_ITEM_NOT_LISTED',
  severity: 'blocks',
  meaning: 'An item was moved that the equipment list does not have',
  remedy: phrase`Correct the line number, or enter the item as found but unlisted`,
  source: PRACTICE,
  check: ({ results, say }) =>
    results.change.changes.flatMap(({ change, listed, path }): Hit[] => {
      if (change.kind !== 'relocated' || listed) return [];
      return [
        {
          path: [...path, 'item'],
          sentence: say.words`Item ${change.item} was moved, but the equipment list does not have it`,
          data: { item: change.item },
        },
      ];
    }),
};
