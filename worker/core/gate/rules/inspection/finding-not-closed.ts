import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const findingNotClosed: Rule = {
  code: 'FINDING_NOT_CLOSED',
  severity: 'blocks',
  meaning: 'A finding is said to be rectified, but not by whom, when or how',
  remedy: m.findingNotClosed_remedy,
  source: read('14 CFR 43.9(a) as summarised'),
  check: ({ visit }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, closedBy, closedAt, action }, index): Hit[] => {
      if (disposition !== 'rectified' || (closedBy && closedAt && action)) return [];
      return [
        {
          path: ['findings', index],
          sentence: said(m.findingNotClosed_findingRectifiedButWhat, { id }),
          data: { finding: id },
        },
      ];
    }),
};
