import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const supplementOwed: Rule = {
  code: 'SUPPLEMENT_OWED',
  severity: 'blocks',
  meaning: 'The flight manual supplement for a modification is missing, and not stated as unnecessary',
  remedy: m.supplementOwed_remedy,
  source: read('CS-STAN (manual supplement)'),
  check: ({ visit }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, supplement, noSupplementNeeded }) => {
      if (supplement?.state === 'in-place' || (!supplement && noSupplementNeeded)) return undefined;
      const sentence = supplement
        ? said(m.supplementOwed_modificationSupplementOwed, { id, supplement: supplement.text })
        : said(m.supplementOwed_modificationSaysNothingAbout, { id });
      return { field: 'supplement', sentence, data: { modification: id } };
    }),
};
