import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const placardOwed: Rule = {
  code: 'PLACARD_OWED',
  severity: 'blocks',
  meaning: 'A placard required by a modification is not in place',
  remedy: m.placardOwed_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, placards }) =>
      hits(placards, ({ text, state }, step) => {
        if (state === 'in-place') return undefined;
        return {
          field: ['placards', step, 'state'],
          sentence: said(m.placardOwed_modificationPlacardNotPlace, { id, text }),
          data: { modification: id },
        };
      }),
    ),
};
