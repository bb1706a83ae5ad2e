import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const declinedByNobody: Rule = {
  code: 'DECLINED_BY_NOBODY',
  severity: 'caution',
  meaning: 'Work is entered as declined, but not by whom and when',
  remedy: m.declinedByNobody_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, declined }, index): Hit[] =>
      disposition === 'declined' && !declined
        ? [
            {
              path: ['findings', index, 'declined'],
              sentence: said(m.declinedByNobody_findingDeclinedButNot, { id }),
              data: { finding: id },
            },
          ]
        : [],
    ),
};
