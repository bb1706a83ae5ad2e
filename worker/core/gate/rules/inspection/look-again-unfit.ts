import { leftUntil, overdue } from '../../../calc/lives/due.ts';
import { countRead, hoursRead } from '../../../calc/open-items/readings.ts';
import { namedMeter } from '../../../calc/open-items/stands-open.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const lookAgainUnfit: Rule = {
  code: 'LOOK_AGAIN_UNFIT',
  severity: 'caution',
  meaning: 'The limit to review a monitored finding has passed, or the finding is not monitored',
  remedy: m.lookAgainUnfit_remedy,
  source: PRACTICE,
  check: ({ visit, results, at }) =>
    hitsIn(['findings'], visit.findings, ({ id, disposition, lookAgain }) => {
      if (!lookAgain) return undefined;
      const data = { finding: id };
      if (disposition !== 'monitor')
        return { field: 'lookAgain', sentence: said(m.lookAgainUnfit_notMonitored, { id }), data };
      const { readings } = results;
      const left = leftUntil(lookAgain, dateOf(at), {
        hours: hoursRead(readings, namedMeter(visit, lookAgain.meter)),
        count: (counts) => countRead(readings, counts, {}),
      });
      return overdue({}, dateOf(at), left, lookAgain.date).isOverdue
        ? { field: 'lookAgain', sentence: said(m.lookAgainUnfit_passed, { id }), data }
        : undefined;
    }),
};
