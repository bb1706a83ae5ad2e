import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const findingWithoutDisposition: Rule = {
  code: 'FINDING_WITHOUT_DISPOSITION',
  severity: 'blocks',
  meaning: 'A finding has no decision',
  remedy: m.findingWithoutDisposition_remedy,
  source: read('ML.A.403; 14 CFR 43.11'),
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, text, disposition }) => {
      if (disposition && disposition !== 'open') return undefined;
      return {
        field: 'disposition',
        sentence: said(m.findingWithoutDisposition_findingNoDisposition, { id, text }),
        data: { finding: id },
      };
    }),
};
