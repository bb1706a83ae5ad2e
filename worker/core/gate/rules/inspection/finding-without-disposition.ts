import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const findingWithoutDisposition: Rule = {
  code: 'FINDING_WITHOUT_DISPOSITION',
  severity: 'blocks',
  meaning: 'A finding is open',
  remedy: m.findingWithoutDisposition_remedy,
  source: read('ML.A.403; 14 CFR 43.11'),
  check: ({ visit }) =>
    (visit.findings ?? []).flatMap(({ id, text, disposition }, index): Hit[] => {
      if (disposition && disposition !== 'open') return [];
      return [
        {
          path: ['findings', index, 'disposition'],
          sentence: said(m.findingWithoutDisposition_findingNoDisposition, { id, text }),
          data: { finding: id },
        },
      ];
    }),
};
