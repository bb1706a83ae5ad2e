import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const massZero: Rule = {
  code: 'MASS_ZERO',
  severity: 'caution',
  meaning: 'An item put in has no mass',
  remedy: phrase`Weigh it`,
  source: read('FAA-H-8083-1B ch. 7'),
  check: ({ results, say }) =>
    results.change.lines
      .filter(({ kind, massKg }) => kind === 'installed' && massKg === 0)
      .map(({ item, name = '', pointer }) => ({
        path: `${pointer}/mass`,
        sentence: say.words`Item ${item}, ${name}, was put in with no mass`,
        data: { item },
      })),
};
