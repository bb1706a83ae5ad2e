import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import { hoursRead } from '../../../calc/open-items/readings.ts';
import { namedMeter } from '../../../calc/open-items/stands-open.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const directiveOverdue: Rule = {
  code: 'DIRECTIVE_OVERDUE',
  severity: 'blocks',
  meaning: 'A recurring directive is past its date or hours',
  remedy: m.beforeFlight,
  source: read('14 CFR 91.417 (next due of recurring directives)'),
  check: ({ visit, results, at }) =>
    (visit.bulletins?.items ?? []).flatMap(
      ({ id, subject, status, nextDueDate, nextDueHours, meter }, index): Hit[] => {
        const path = ['bulletins', 'items', index];
        if (status !== 'recurring') return [];
        const hours = hoursRead(results.readings, namedMeter(visit, meter));
        if (nextDueDate === undefined && nextDueHours === undefined)
          return [
            { path, sentence: said(m.directiveOverdue_recursButNothingTells, { id, subject }), data: { bulletin: id } },
          ];
        if (nextDueHours !== undefined && hours === undefined)
          return [
            {
              path,
              sentence: said(m.directiveOverdue_recursHoursButRecord, { id, subject }),
              data: { bulletin: id },
            },
          ];
        const isLate =
          (nextDueDate !== undefined && nextDueDate < dateOf(at)) ||
          (nextDueHours !== undefined && hours !== undefined && !isAtLeast(nextDueHours, hours));
        return isLate ? [{ path, sentence: said(m.overdue, { id, subject }), data: { bulletin: id } }] : [];
      },
    ),
};
