import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import { hoursRead } from '../../../calc/open-items/readings.ts';
import { namedMeter } from '../../../calc/open-items/stands-open.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const deferralExpired: Rule = {
  code: 'DEFERRAL_EXPIRED',
  severity: 'blocks',
  meaning: 'The limit of a deferred item has passed',
  remedy: m.deferralExpired_remedy,
  source: read('ML.A.403 (within the stated limit)'),
  check: ({ visit, results, at }) =>
    hitsIn(['findings'], visit.findings, ({ id, disposition, deferral }) => {
      if (disposition !== 'deferred' || !deferral) return undefined;
      const { untilDate, untilHours } = deferral;
      const hours = hoursRead(results.readings, namedMeter(visit, deferral.meter));

      if (untilDate !== undefined && untilDate < dateOf(at))
        return {
          field: ['deferral', 'untilDate'],
          sentence: said(m.deferralExpired_findingDone, { id, untilDate: figure.date(untilDate) }),
          data: { finding: id, untilDate },
        };
      if (untilHours === undefined || hours === undefined || isAtLeast(untilHours, hours)) return undefined;
      const [untilText, hoursText] = figure.plainApart(untilHours, hours, 1);
      return {
        field: ['deferral', 'untilHours'],
        sentence: said(m.deferralExpired_findingDoneHMeter, { id, until: untilText, hours: hoursText }),
        data: { finding: id, untilHours, hours },
      };
    }),
};
