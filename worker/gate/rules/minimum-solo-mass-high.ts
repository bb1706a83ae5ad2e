import { PRACTICE, type Rule } from '../rule.ts';

export const minimumSoloMassHigh: Rule = {
  code: 'MINIMUM_SOLO_MASS_HIGH',
  severity: 'caution',
  meaning: 'Only a heavy pilot may fly alone',
  remedy: 'Fit a placard with the least pilot, or ballast',
  source: PRACTICE,
  check: ({ results, regime, say }) => {
    const least = results.loading?.minimumSoloKg;
    if (least === undefined || least <= regime.soloMassHighKg.value) return [];
    return [
      {
        path: ['aircraft', 'envelope'],
        sentence: `The least pilot who may fly alone weighs ${say.measure('mass', least)}`,
        data: { leastKg: least },
      },
    ];
  },
};
