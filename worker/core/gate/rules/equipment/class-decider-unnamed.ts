import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const classDeciderUnnamed: Rule = {
  code: 'CLASS_DECIDER_UNNAMED',
  severity: 'blocks',
  meaning: 'Nobody is named who decided the class of a modification',
  remedy: m.classDeciderUnnamed_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.modifications ?? []).flatMap(({ id, classifiedBy }, index): Hit[] =>
      classifiedBy
        ? []
        : [
            {
              path: ['modifications', index, 'classifiedBy'],
              sentence: said(m.classDeciderUnnamed_nobodyNamedWhoDecided, { id }),
              data: { modification: id },
            },
          ],
    ),
};
