import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const approvalReferenceMissing: Rule = {
  code: 'APPROVAL_REFERENCE_MISSING',
  severity: 'blocks',
  meaning: 'A modification of a class that needs approval names none',
  remedy: phrase`Give the approval reference, or correct the class`,
  source: read('CS-STAN (revision quoted); 14 CFR 91.327; local rules come first'),
  check: ({ visit, regime, say }) =>
    (visit.modifications ?? []).flatMap(({ id, classification, approvalReference }, index): Hit[] => {
      if (approvalReference || !regime.approvalNeeded.value.includes(classification)) return [];
      return [
        {
          path: ['modifications', index, 'approvalReference'],
          sentence: say.words`Modification ${id} is classed ${say.term(classification)} and names no approval`,
          data: { modification: id, classification },
        },
      ];
    }),
};
