import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const circuitUnprotected: Rule = {
  code: 'CIRCUIT_UNPROTECTED',
  severity: 'blocks',
  meaning: 'A circuit has neither breaker nor fuse, and no reason why it needs none',
  remedy: phrase`Fit a breaker or fuse close to the supply, or give the reason`,
  source: read('AC 43.13-1B 11-48: a protector opens before the rating of the wire is exceeded'),
  check: ({ visit, say }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ id, name, protection, unprotectedBecause }, index): Hit[] => {
      if (protection || unprotectedBecause !== undefined) return [];
      return [
        {
          path: ['electrical', 'circuits', index, 'protection'],
          sentence: say.words`Circuit ${name} has no protection`,
          data: { circuit: id },
        },
      ];
    }),
};
