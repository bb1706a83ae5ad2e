import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const asFoundUnresolved: Rule = {
  code: 'AS_FOUND_UNRESOLVED',
  severity: 'caution',
  meaning: 'Something differs from the papers and nobody decided what follows',
  remedy: m.asFoundUnresolved_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.asFound ?? []).flatMap(({ disposition, kind }, index): Hit[] =>
      disposition
        ? []
        : [
            {
              path: ['asFound', index, 'disposition'],
              sentence: said(m.asFoundUnresolved_lineSurveyNoDisposition, { kind: termOf(kind) }),
              data: { kind },
            },
          ],
    ),
};
