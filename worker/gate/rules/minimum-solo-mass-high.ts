import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const minimumSoloMassHigh: Rule = {
  code: 'MINIMUM_SOLO_MASS_HIGH',
  severity: 'caution',
  meaning: 'Only a heavy pilot may fly alone',
  remedy: phrase`Fit a placard with the least pilot, or ballast`,
  source: PRACTICE,
  check: ({ results, regime, say }) => {
    const least = results.loading?.minimumSoloKg;
    if (least === undefined || isAtMost(least, regime.soloMassHighKg.value)) return [];
    return [
      {
        path: ['aircraft', 'envelope'],
        sentence: say.words`The least pilot who may fly alone weighs ${say.measure('mass', least)}`,
        data: { leastKg: least },
      },
    ];
  },
};
