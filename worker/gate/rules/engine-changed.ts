import { type Hit, PRACTICE, type Rule } from '../rule.ts';

/** Air temperature and pressure move every reading by this much from one day to another. */
const NOTICED_SHARE = 0.15;

export const engineChanged: Rule = {
  code: 'ENGINE_CHANGED',
  severity: 'caution',
  meaning: 'An instrument moved by more than its reading explains',
  remedy: 'Explain it, or find the cause',
  source: PRACTICE,
  check: ({ results }) =>
    results.engineRuns.flatMap(({ name, unit, before, after, change, isChanged, isWithin }): Hit[] => {
      const share = change !== undefined && before ? Math.abs(change / before) : 0;
      if (!isChanged || !isWithin || share <= NOTICED_SHARE) return [];
      return [
        {
          path: ['engineRuns'],
          sentence: `${name} was ${before} ${unit} before and ${after} ${unit} after the work`,
          data: { name, change: change ?? 0 },
        },
      ];
    }),
};
