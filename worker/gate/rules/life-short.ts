import { phrase } from '../../words/words.ts';
import { comesSoon } from '../comes-soon.ts';
import { lifePath } from '../life-path.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const lifeShort: Rule = {
  code: 'LIFE_SHORT',
  severity: 'caution',
  meaning: 'Something comes due within days or a few hours',
  remedy: phrase`Plan it, or do it now`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    results.due.flatMap((due): Hit[] => {
      const { id, item, isOverdue } = due;
      return comesSoon(due) && !isOverdue
        ? [{ path: lifePath(visit, id), sentence: say.words`${id}, ${item}, comes due soon`, data: { life: id } }]
        : [];
    }),
};
