import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const declinedByNobody: Rule = {
  code: 'DECLINED_BY_NOBODY',
  severity: 'caution',
  meaning: 'Work is declined, but person or time is missing',
  remedy: m.declinedByNobody_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, disposition, declined }) =>
      disposition === 'declined' && !declined
        ? {
            field: 'declined',
            sentence: said(m.declinedByNobody_findingDeclinedButNot, { id }),
            data: { finding: id },
          }
        : undefined,
    ),
};
