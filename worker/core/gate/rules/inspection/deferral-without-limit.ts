import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const deferralWithoutLimit: Rule = {
  code: 'DEFERRAL_WITHOUT_LIMIT',
  severity: 'blocks',
  meaning: 'A deferred item has no limit by date or hours',
  remedy: m.deferralWithoutLimit_remedy,
  source: read('ML.A.403; 14 CFR 43.11'),
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, disposition, deferral }) => {
      if (
        disposition !== 'deferred' ||
        !deferral ||
        deferral.untilDate !== undefined ||
        deferral.untilHours !== undefined
      )
        return undefined;
      return {
        field: 'deferral',
        sentence: said(m.deferralWithoutLimit_findingDeferredWithoutDate, { id }),
        data: { finding: id },
      };
    }),
};
