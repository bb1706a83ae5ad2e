import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const findingNotClosed: Rule = {
  code: 'FINDING_NOT_CLOSED',
  severity: 'blocks',
  meaning: 'A finding is rectified, but action, person or time is missing',
  remedy: m.findingNotClosed_remedy,
  source: read('14 CFR 43.9(a)'),
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, disposition, closedBy, closedAt, action }) => {
      if (disposition !== 'rectified' || (closedBy && closedAt && action)) return undefined;
      return {
        sentence: said(m.findingNotClosed_findingRectifiedButWhat, { id }),
        data: { finding: id },
      };
    }),
};
