import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const leastLoadTooHeavy: Rule = {
  code: 'LEAST_LOAD_TOO_HEAVY',
  severity: 'blocks',
  meaning: 'Even the least load that can fly exceeds the maximum mass or another limit',
  remedy: phrase`Check empty mass, maximum masses, loading limits and the least pilot`,
  source: PRACTICE,
  check: ({ visit, results, say }) => {
    const { loading } = results;
    if (!loading || loading.extremes || !visit.aircraft.stations.some(({ kind }) => kind === 'pilot')) return [];
    return [
      {
        path: ['aircraft', 'maximumMass'],
        sentence: say.words`Even the lightest pilot with no usable fuel exceeds the maximum mass, the maximum zero-fuel mass, the maximum landing mass or a loading limit`,
      },
    ];
  },
};
