import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const deferralMissing: Rule = {
  code: 'DEFERRAL_MISSING',
  severity: 'blocks',
  meaning: 'A finding is deferred, but nothing says by whom and why',
  remedy: m.deferralMissing_remedy,
  source: read('ML.A.403; 14 CFR 43.11'),
  check: ({ visit }) =>
    (visit.findings ?? []).flatMap(({ id, disposition, deferral }, index): Hit[] =>
      disposition === 'deferred' && !deferral
        ? [
            {
              path: ['findings', index, 'deferral'],
              sentence: said(m.deferralMissing_findingDeferredButNothing, { id }),
              data: { finding: id },
            },
          ]
        : [],
    ),
};
