import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const partShelfLife: Rule = {
  code: 'PART_SHELF_LIFE',
  severity: 'blocks',
  meaning: 'A part or material was fitted after the end of its shelf life',
  remedy: m.partShelfLife_remedy,
  source: PRACTICE,
  check: ({ visit, at }) =>
    hitsIn(['parts'], visit.parts, ({ id, description, shelfLifeUntil, fittedOn }) => {
      const on = fittedOn ?? dateOf(at);
      if (shelfLifeUntil === undefined || shelfLifeUntil >= on) return undefined;
      return {
        field: 'shelfLifeUntil',
        sentence: said(m.partShelfLife_partFittedShelfLife, {
          id,
          description,
          on: figure.date(on),
          shelfLifeUntil: figure.date(shelfLifeUntil),
        }),
        data: { part: id, shelfLifeUntil, fittedOn: on },
      };
    }),
};
