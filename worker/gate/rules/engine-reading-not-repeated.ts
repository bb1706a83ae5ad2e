import { lastRun } from '../../calc/engine-runs.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const engineReadingNotRepeated: Rule = {
  code: 'ENGINE_READING_NOT_REPEATED',
  severity: 'caution',
  meaning:
    'An instrument was read in the last run before the work and not, or in another unit, in the last run after it',
  remedy: phrase`Read it in another run, under the same name and in the same unit`,
  source: PRACTICE,
  check: ({ visit, results, say }) => {
    const last = lastRun(visit.engineRuns ?? [], 'after');
    if (!last) return [];
    return results.engineRuns.flatMap(({ name, unit, before, after }): Hit[] =>
      before === undefined || after !== undefined
        ? []
        : [
            {
              path: ['engineRuns', last.index, 'values'],
              sentence: say.words`${name} was ${say.asIs(before)} ${unit} before the work and was not read after it in ${unit}`,
              data: { name, before },
            },
          ],
    );
  },
};
