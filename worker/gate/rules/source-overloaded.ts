import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { PHASE_NAMES } from '../phase-names.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const sourceOverloaded: Rule = {
  code: 'SOURCE_OVERLOADED',
  severity: 'blocks',
  meaning: 'The continuous load in a phase is more than the sources can give',
  remedy: phrase`Take loads off, or fit a greater source`,
  source: read('AC 43.13-1B 11-35: load within the capacity of the generator'),
  check: ({ results, say }) =>
    (results.electrical?.phases ?? []).flatMap(({ phase, continuousA, capacityA }): Hit[] => {
      if (capacityA === undefined || isAtMost(continuousA, capacityA)) return [];
      const [loadText, capacityText] = say.plainApart(continuousA, capacityA, 1);
      return [
        {
          path: ['electrical', 'sources'],
          sentence: say.words`${say.term(PHASE_NAMES[phase])}: continuous load ${loadText} A; the sources give ${capacityText} A`,
          data: { phase, continuousA, capacityA },
        },
      ];
    }),
};
