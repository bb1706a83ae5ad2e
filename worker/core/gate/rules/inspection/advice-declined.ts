import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const adviceDeclined: Rule = {
  code: 'ADVICE_DECLINED',
  severity: 'note',
  meaning: 'The owner declined something that was advised',
  remedy: m.adviceDeclined_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.findings ?? []).flatMap(({ id, text, severity, disposition }, index): Hit[] =>
      disposition === 'declined' && severity !== 'airworthiness'
        ? [
            {
              path: ['findings', index],
              sentence: said(m.adviceDeclined_ownerDeclinedFinding, { id, text }),
              data: { finding: id },
            },
          ]
        : [],
    ),
};
