import { dateOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const partShelfLife: Rule = {
  code: 'PART_SHELF_LIFE',
  severity: 'blocks',
  meaning: 'A part or material was fitted after its shelf life',
  remedy: phrase`Replace it`,
  source: PRACTICE,
  check: ({ visit, at, say }) =>
    (visit.parts ?? []).flatMap(({ id, description, shelfLifeUntil, fittedOn }, index): Hit[] => {
      const on = fittedOn ?? dateOf(at);
      if (shelfLifeUntil === undefined || shelfLifeUntil >= on) return [];
      return [
        {
          path: ['parts', index, 'shelfLifeUntil'],
          sentence: say.words`Part ${id}, ${description}, was fitted ${say.date(on)}; its shelf life ended ${say.date(shelfLifeUntil)}`,
          data: { part: id, shelfLifeUntil, fittedOn: on },
        },
      ];
    }),
};
