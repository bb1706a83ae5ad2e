import { lastRun } from '../../calc/engine-runs.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const leaksNotLookedFor: Rule = {
  code: 'LEAKS_NOT_LOOKED_FOR',
  severity: 'blocks',
  meaning: 'Nobody looked for leaks after the last run',
  remedy: phrase`Look by torch with the engine stopped`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const last = lastRun(visit.engineRuns ?? [], 'after');
    return last && last.run.leaksLookedFor !== true
      ? [
          {
            path: ['engineRuns', last.index, 'leaksLookedFor'],
            sentence: say.words`Nobody looked for leaks after the last run of the engine`,
          },
        ]
      : [];
  },
};
