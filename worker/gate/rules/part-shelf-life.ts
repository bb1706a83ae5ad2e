import { dateOf, printDate } from '../../units/calendar.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const partShelfLife: Rule = {
  code: 'PART_SHELF_LIFE',
  severity: 'blocks',
  meaning: 'A part or material was fitted after its shelf life',
  remedy: 'Replace it',
  source: PRACTICE,
  check: ({ visit, at }) =>
    (visit.parts ?? []).flatMap(({ id, description, shelfLifeUntil, fittedOn }, index): Hit[] => {
      const on = fittedOn ?? dateOf(at);
      if (shelfLifeUntil === undefined || shelfLifeUntil >= on) return [];
      return [
        {
          path: ['parts', index, 'shelfLifeUntil'],
          sentence: `Part ${id}, ${description}, was fitted ${printDate(on)}; its shelf life ended ${printDate(shelfLifeUntil)}`,
          data: { part: id, shelfLifeUntil, fittedOn: on },
        },
      ];
    }),
};
