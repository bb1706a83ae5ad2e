import { leftUntil, overdue } from '../../../calc/lives/due.ts';
import { hoursRead } from '../../../calc/open-items/readings.ts';
import { namedMeter } from '../../../calc/open-items/stands-open.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { dueFigures } from '../../due-figures.ts';
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
      const { untilDate, untilHours, meter } = deferral;
      const named = namedMeter(visit, meter);
      const until = { date: untilDate, hours: untilHours };
      const today = dateOf(at);
      const left = leftUntil(until, today, { hours: hoursRead(results.readings, named), count: () => undefined });
      if (!overdue({}, today, left, untilDate).isOverdue) return undefined;
      const { figures, data } = dueFigures({ ...named, ...left, until });
      return {
        field: ['deferral', (left.daysLeft ?? 0) < 0 ? 'untilDate' : 'untilHours'],
        sentence: said(m.deferralExpired_findingDone, { id, figures }),
        data: { finding: id, ...data },
      };
    }),
};
