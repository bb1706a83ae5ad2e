import { phrase } from '../../words/words.ts';
import { lifePath } from '../life-path.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const lifeUnknown: Rule = {
  code: 'LIFE_UNKNOWN',
  severity: 'blocks',
  meaning: 'Nothing tells when something that binds was last done',
  remedy: phrase`Find the entry, or do it now: unknown is not new`,
  source: PRACTICE,
  check: ({ visit, results, say }) =>
    results.due.flatMap(({ id, item, basis, dueDate, dueHours, dueLandings }): Hit[] => {
      const isKnown = dueDate !== undefined || dueHours !== undefined || dueLandings !== undefined;
      return isKnown || basis === 'owner' || basis === 'recommendation'
        ? []
        : [
            {
              path: lifePath(visit, id),
              sentence: say.words`${id}, ${item}: nothing tells when it comes due`,
              data: { life: id },
            },
          ];
    }),
};
