import { lastRun } from '../../calc/engine-runs.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const leaksNotLookedFor: Rule = {
  code: 'LEAKS_NOT_LOOKED_FOR',
  severity: 'blocks',
  meaning: 'Nobody looked for leaks after the last run',
  remedy: 'Look by torch with the engine stopped',
  source: PRACTICE,
  check: ({ visit }) => {
    const last = lastRun(visit.engineRuns ?? [], 'after');
    return last && last.run.leaksLookedFor !== true
      ? [
          {
            path: ['engineRuns', last.index, 'leaksLookedFor'],
            sentence: 'Nobody looked for leaks after the last run of the engine',
          },
        ]
      : [];
  },
};
