import { leftUntil, overdue } from '../../../calc/lives/due.ts';
import { hoursRead } from '../../../calc/open-items/readings.ts';
import { namedMeter } from '../../../calc/open-items/stands-open.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { dateOf } from '../../../units/calendar.ts';
import { dueFigures } from '../../due-figures.ts';
import { type EntryHit, hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const directiveOverdue: Rule = {
  code: 'DIRECTIVE_OVERDUE',
  severity: 'blocks',
  meaning: 'A recurring directive is past its date or hours',
  remedy: m.beforeFlight,
  source: read('14 CFR 91.417 (next due of recurring directives)'),
  check: ({ visit, results, at }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, (bulletin) => {
      const { id, subject, status, nextDueDate, nextDueHours, meter } = bulletin;
      if (status !== 'recurring') return undefined;
      const named = namedMeter(visit, meter);
      const hours = hoursRead(results.readings, named);
      const hit = (sentence: Said, data: EntryHit['data'] = {}): EntryHit => ({
        sentence,
        data: { bulletin: id, ...data },
      });
      if (nextDueDate === undefined && nextDueHours === undefined)
        return hit(said(m.directiveOverdue_recursButNothingTells, { id, subject }));
      if (nextDueHours !== undefined && hours === undefined)
        return hit(said(m.directiveOverdue_recursHoursButRecord, { id, subject }));
      const until = { date: nextDueDate, hours: nextDueHours };
      const left = leftUntil(until, dateOf(at), { hours, count: () => undefined });
      if (!overdue({}, dateOf(at), left, nextDueDate).isOverdue) return undefined;
      const { figures, data } = dueFigures({ ...named, ...left, until });
      return hit(said(m.overdue, { id, subject, figures }), data);
    }),
};
