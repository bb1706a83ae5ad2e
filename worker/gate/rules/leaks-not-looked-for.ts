import { PRACTICE, type Rule } from '../rule.ts';

export const leaksNotLookedFor: Rule = {
  code: 'LEAKS_NOT_LOOKED_FOR',
  severity: 'blocks',
  meaning: 'Nobody looked for leaks after the last run',
  remedy: 'Look by torch with the engine stopped',
  source: PRACTICE,
  check: ({ visit }) => {
    const index = (visit.engineRuns ?? []).findLastIndex(({ when }) => when === 'after');
    const run = visit.engineRuns?.[index];
    return run && run.leaksLookedFor !== true
      ? [
          {
            path: ['engineRuns', index, 'leaksLookedFor'],
            sentence: 'Nobody looked for leaks after the last run of the engine',
          },
        ]
      : [];
  },
};
