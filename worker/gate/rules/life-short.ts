import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { lifePath } from '../life-path.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

const SOON_DAYS = 30;
const SOON_HOURS = 10;

export const lifeShort: Rule = {
  code: 'LIFE_SHORT',
  severity: 'caution',
  meaning: 'Something comes due within days or a few hours',
  remedy: phrase`Plan it, or do it now`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    results.due.flatMap(({ id, item, isOverdue, daysLeft, hoursLeft }): Hit[] => {
      const isSoon =
        (daysLeft !== undefined && daysLeft <= SOON_DAYS) ||
        (hoursLeft !== undefined && isAtMost(hoursLeft, SOON_HOURS));
      return isSoon && !isOverdue
        ? [{ path: lifePath(visit, id), sentence: say.words`${id}, ${item}, comes due soon`, data: { life: id } }]
        : [];
    }),
};
