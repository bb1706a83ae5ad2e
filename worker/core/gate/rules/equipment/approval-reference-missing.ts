import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const approvalReferenceMissing: Rule = {
  code: 'APPROVAL_REFERENCE_MISSING',
  severity: 'blocks',
  meaning: 'A modification of a class that requires approval has no approval reference',
  remedy: m.approvalReferenceMissing_remedy,
  source: read('CS-STAN (revision quoted); 14 CFR 91.327; local rules come first'),
  values: ['approvalNeeded'],
  check: ({ visit, regime }) =>
    hitsIn(['modifications'], visit.modifications, ({ id, classification, approvalReference }) => {
      if (approvalReference || !regime.approvalNeeded.value.includes(classification)) return undefined;
      return {
        field: 'approvalReference',
        sentence: said(m.approvalReferenceMissing_modificationClassedNamesNo, {
          id,
          classification: termOf(classification),
        }),
        data: { modification: id, classification },
      };
    }),
};
