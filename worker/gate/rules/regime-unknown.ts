import { phrase } from '../../words/words.ts';
import { REGIMES } from '../regimes/table.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const regimeUnknown: Rule = {
  code: 'REGIME_UNKNOWN',
  severity: 'blocks',
  meaning: 'The record names a regime that is not known here',
  remedy: phrase`Name a known regime, or generic where none fits`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const { regime } = visit.aircraft;
    if (REGIMES.some(({ id }) => id === regime)) return [];
    return [
      {
        path: ['aircraft', 'regime'],
        sentence: say.words`Regime “${regime}” is not known; known are ${REGIMES.map(({ id }) => id).join(', ')}`,
        data: { regime },
      },
    ];
  },
};
