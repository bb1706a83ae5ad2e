import { phrase } from '../../words/words.ts';
import { isPastLimit } from '../held-items.ts';
import { lifePath } from '../life-path.ts';
import { type Rule, read } from '../rule.ts';

export const lifeExceeded: Rule = {
  code: 'LIFE_EXCEEDED',
  severity: 'blocks',
  meaning: 'Something that binds is overdue',
  remedy: phrase`Do it before flight`,
  source: read('14 CFR 91.417; AMC M.A.305 (status of life-limited parts)'),
  check: ({ visit, results, say }) =>
    results.due.filter(isPastLimit).map(({ id, item }) => ({
      path: lifePath(visit, id),
      sentence: say.words`${id}, ${item}, is overdue`,
      data: { life: id },
    })),
};
