import { phrase } from '../../words/words.ts';
import { lifePath } from '../life-path.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const toleranceUsed: Rule = {
  code: 'TOLERANCE_USED',
  severity: 'caution',
  meaning: 'Something is overdue within its tolerance',
  remedy: phrase`Do it soon; the next interval counts from where it was due`,
  source: read('ML.A.302 (tolerance, next interval)'),
  check: ({ visit, results, say }) =>
    results.due.flatMap(({ id, item, basis, isWithinTolerance }): Hit[] =>
      isWithinTolerance && basis === 'programme'
        ? [
            {
              path: lifePath(visit, id),
              sentence: say.words`${id}, ${item}, is overdue, within its tolerance`,
              data: { life: id },
            },
          ]
        : [],
    ),
};
