import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const supplementOwed: Rule = {
  code: 'SUPPLEMENT_OWED',
  severity: 'blocks',
  meaning: 'The flight manual lacks a supplement for a modification, and nobody stated that none is needed',
  remedy: m.supplementOwed_remedy,
  source: read('CS-STAN (manual supplement)'),
  check: ({ visit }) =>
    (visit.modifications ?? []).flatMap(({ id, supplement, noSupplementNeeded }, index): Hit[] => {
      if (supplement?.state === 'in-place' || (!supplement && noSupplementNeeded)) return [];
      const sentence = supplement
        ? said(m.supplementOwed_modificationSupplementOwed, { id, supplement: supplement.text })
        : said(m.supplementOwed_modificationSaysNothingAbout, { id });
      return [{ path: ['modifications', index, 'supplement'], sentence, data: { modification: id } }];
    }),
};
