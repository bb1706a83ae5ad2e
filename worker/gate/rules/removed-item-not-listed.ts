import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const removedItemNotListed: Rule = {
  code: 'REMOVED_ITEM_NOT_LISTED',
  severity: 'blocks',
  meaning: 'An item was taken out that the equipment list does not have',
  remedy: phrase`Correct the line number, or enter the item as found but unlisted`,
  source: read('FAA-H-8083-30, equipment change'),
  check: ({ results, say }) =>
    results.change.changes.flatMap(({ modification, change, listed, path }): Hit[] => {
      if (change.kind !== 'removed' && change.kind !== 'replaced') return [];
      if (listed) return [];
      return [
        {
          path: [...path, 'item'],
          sentence: say.words`Modification ${modification} takes out item ${change.item}, which the equipment list does not have`,
          data: { item: change.item },
        },
      ];
    }),
};
