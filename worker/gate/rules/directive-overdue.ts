import { isAtLeast } from '../../calc/limit-met.ts';
import { hoursOf } from '../../calc/total-hours.ts';
import { dateOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const directiveOverdue: Rule = {
  code: 'DIRECTIVE_OVERDUE',
  severity: 'blocks',
  meaning: 'A recurring directive is past its date or hours',
  remedy: phrase`Do it before flight`,
  source: read('14 CFR 91.417 (next due of recurring directives)'),
  check: ({ visit, at, say }) => {
    const hours = hoursOf(visit, 'airframe');
    return (visit.bulletins?.items ?? []).flatMap(
      ({ id, subject, status, nextDueDate, nextDueHours }, index): Hit[] => {
        const path = ['bulletins', 'items', index];
        if (status !== 'recurring') return [];
        if (nextDueDate === undefined && nextDueHours === undefined)
          return [
            { path, sentence: say.words`${id}, ${subject}, recurs, but nothing tells when`, data: { bulletin: id } },
          ];
        if (nextDueHours !== undefined && hours === undefined)
          return [
            {
              path,
              sentence: say.words`${id}, ${subject}, recurs by hours, but the record has none`,
              data: { bulletin: id },
            },
          ];
        const isLate =
          (nextDueDate !== undefined && nextDueDate < dateOf(at)) ||
          (nextDueHours !== undefined && hours !== undefined && !isAtLeast(nextDueHours, hours));
        return isLate ? [{ path, sentence: say.words`${id}, ${subject}, is overdue`, data: { bulletin: id } }] : [];
      },
    );
  },
};
