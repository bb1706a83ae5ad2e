import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const classDeciderUnnamed: Rule = {
  code: 'CLASS_DECIDER_UNNAMED',
  severity: 'blocks',
  meaning: 'The person who classified a modification is not recorded',
  remedy: m.classDeciderUnnamed_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, classifiedBy }) => {
      if (classifiedBy) return undefined;
      return {
        field: 'classifiedBy',
        sentence: said(m.classDeciderUnnamed_nobodyNamedWhoDecided, { id }),
        data: { modification: id },
      };
    }),
};
