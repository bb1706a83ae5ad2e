import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const modificationNotInspected: Rule = {
  code: 'MODIFICATION_NOT_INSPECTED',
  severity: 'blocks',
  meaning: 'A modification was not inspected, only by a person who did the work, or at an unknown time',
  remedy: m.modificationNotInspected_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, by, inspectedBy, inspectedAt }) => {
      if (inspectedBy && !by.includes(inspectedBy))
        return inspectedAt
          ? undefined
          : {
              field: 'inspectedAt',
              sentence: said(m.modificationNotInspected_noTime, { id }),
              data: { modification: id },
            };
      const sentence = inspectedBy
        ? said(m.modificationNotInspected_modificationInspectedPersonWho, { id })
        : said(m.modificationNotInspected_modificationNotInspected, { id });
      return { field: 'inspectedBy', sentence, data: { modification: id } };
    }),
};
