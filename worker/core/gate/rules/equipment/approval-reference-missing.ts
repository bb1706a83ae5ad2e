import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const approvalReferenceMissing: Rule = {
  code: 'APPROVAL_REFERENCE_MISSING',
  severity: 'blocks',
  meaning: 'A modification of a class that needs approval names none',
  remedy: m.approvalReferenceMissing_remedy,
  source: read('CS-STAN (revision quoted); 14 CFR 91.327; local rules come first'),
  check: ({ visit, regime }) =>
    (visit.modifications ?? []).flatMap(({ id, classification, approvalReference }, index): Hit[] => {
      if (approvalReference || !regime.approvalNeeded.value.includes(classification)) return [];
      return [
        {
          path: ['modifications', index, 'approvalReference'],
          sentence: said(m.approvalReferenceMissing_modificationClassedNamesNo, {
            id,
            classification: termOf(classification),
          }),
          data: { modification: id, classification },
        },
      ];
    }),
};
