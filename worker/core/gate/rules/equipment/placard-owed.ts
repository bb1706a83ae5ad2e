import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const placardOwed: Rule = {
  code: 'PLACARD_OWED',
  severity: 'blocks',
  meaning: 'A placard that a modification calls for is not in place',
  remedy: m.placardOwed_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.modifications ?? []).flatMap(({ id, placards }, index) =>
      (placards ?? []).flatMap(({ text, state }, step): Hit[] =>
        state === 'in-place'
          ? []
          : [
              {
                path: ['modifications', index, 'placards', step, 'state'],
                sentence: said(m.placardOwed_modificationPlacardNotPlace, { id, text }),
                data: { modification: id },
              },
            ],
      ),
    ),
};
