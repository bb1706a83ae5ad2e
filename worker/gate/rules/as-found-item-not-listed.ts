import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const asFoundItemNotListed: Rule = {
  code: 'AS_FOUND_ITEM_NOT_LISTED',
  severity: 'blocks',
  meaning: 'The survey names an item that the equipment list does not have',
  remedy: 'Correct the line number',
  source: PRACTICE,
  check: ({ visit }) => {
    const listed = new Set((visit.baseline?.equipment ?? []).map(({ id }) => id));
    return (visit.asFound ?? []).flatMap((line, index): Hit[] => {
      if (line.kind === 'unlisted' || listed.has(line.item)) return [];
      return [
        {
          path: ['asFound', index, 'item'],
          sentence: `The survey names item ${line.item}, which the equipment list does not have`,
          data: { item: line.item },
        },
      ];
    });
  },
};
