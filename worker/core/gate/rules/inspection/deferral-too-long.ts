import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { daysBetween } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const deferralTooLong: Rule = {
  code: 'DEFERRAL_TOO_LONG',
  severity: 'caution',
  meaning: 'A finding is deferred for longer than the regime allows',
  remedy: m.deferralTooLong_remedy,
  source: PRACTICE,
  values: ['deferralDaysLongest'],
  check: ({ visit, regime }) =>
    hitsIn(['findings'], visit.findings, ({ id, disposition, deferral }) => {
      if (disposition !== 'deferred' || deferral?.untilDate === undefined) return undefined;
      const { firstDeferredOn, untilDate } = deferral;
      const days = daysBetween(firstDeferredOn, untilDate);
      const longest = regime.deferralDaysLongest.value;
      if (days <= longest) return undefined;
      return {
        field: ['deferral', 'untilDate'],
        sentence: said(m.deferralTooLong_deferredDays, {
          id,
          first: figure.date(firstDeferredOn),
          until: figure.date(untilDate),
          days,
          longest,
        }),
        data: { finding: id, days, longest },
      };
    }),
};
