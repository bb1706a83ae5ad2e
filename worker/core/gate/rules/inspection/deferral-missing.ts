import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const deferralMissing: Rule = {
  code: 'DEFERRAL_MISSING',
  severity: 'blocks',
  meaning: 'A finding is deferred, but person or reason is missing',
  remedy: m.deferralMissing_remedy,
  source: read('ML.A.403; 14 CFR 43.11'),
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, disposition, deferral }) =>
      disposition === 'deferred' && !deferral
        ? {
            field: 'deferral',
            sentence: said(m.deferralMissing_findingDeferredButNothing, { id }),
            data: { finding: id },
          }
        : undefined,
    ),
};
