import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const adviceDeclined: Rule = {
  code: 'ADVICE_DECLINED',
  severity: 'note',
  meaning: 'The owner declined recommended work',
  remedy: m.adviceDeclined_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, text, severity, disposition }) =>
      disposition === 'declined' && severity !== 'airworthiness'
        ? {
            sentence: said(m.adviceDeclined_ownerDeclinedFinding, { id, text }),
            data: { finding: id },
          }
        : undefined,
    ),
};
