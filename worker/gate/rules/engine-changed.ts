import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

/** Air temperature and pressure move every reading by this much from one day to another. */
const NOTICED_SHARE = 0.15;

export const engineChanged: Rule = {
  code: 'ENGINE_CHANGED',
  severity: 'caution',
  meaning: 'An instrument moved by more than its reading explains',
  remedy: phrase`Explain it, or find the cause`,
  source: PRACTICE,
  check: ({ results, say }) =>
    results.engineRuns.flatMap(({ name, unit, before, after, change, isChanged, isWithin }): Hit[] => {
      const share = change !== undefined && before ? Math.abs(change / before) : 0;
      if (!isChanged || !isWithin || isAtMost(share, NOTICED_SHARE) || before === undefined || after === undefined)
        return [];
      return [
        {
          path: ['engineRuns'],
          sentence: say.words`${name} was ${say.asIs(before)} ${unit} before and ${say.asIs(after)} ${unit} after the work`,
          data: { name, change: change ?? 0 },
        },
      ];
    }),
};
