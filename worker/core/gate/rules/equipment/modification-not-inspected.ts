import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const modificationNotInspected: Rule = {
  code: 'MODIFICATION_NOT_INSPECTED',
  severity: 'blocks',
  meaning: 'A modification names no inspector, or one who did the work',
  remedy: m.modificationNotInspected_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.modifications ?? []).flatMap(({ id, by, inspectedBy }, index): Hit[] => {
      if (inspectedBy && !by.includes(inspectedBy)) return [];
      const sentence = inspectedBy
        ? said(m.modificationNotInspected_modificationInspectedPersonWho, { id })
        : said(m.modificationNotInspected_modificationNotInspected, { id });
      return [{ path: ['modifications', index, 'inspectedBy'], sentence, data: { modification: id } }];
    }),
};
