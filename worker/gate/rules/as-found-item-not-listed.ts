import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const asFoundItemNotListed: Rule = {
  code: 'AS_FOUND_ITEM_NOT_LISTED',
  severity: 'blocks',
  meaning: 'The survey names an item that the equipment list does not have',
  remedy: phrase`Correct the line number`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const listed = new Set((visit.baseline?.equipment ?? []).map(({ id }) => id));
    return (visit.asFound ?? []).flatMap((line, index): Hit[] => {
      if (line.kind === 'unlisted' || listed.has(line.item)) return [];
      return [
        {
          path: ['asFound', index, 'item'],
          sentence: say.words`The survey names item ${line.item}, which the equipment list does not have`,
          data: { item: line.item },
        },
      ];
    });
  },
};
