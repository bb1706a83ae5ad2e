import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';
import { conductorName } from '../wire-name.ts';

export const wireOverloaded: Rule = {
  code: 'WIRE_OVERLOADED',
  severity: 'blocks',
  meaning: 'A wire carries more than it can without end in this bundle, place and altitude',
  remedy: phrase`Take a thicker wire, a smaller bundle or less load`,
  source: read('AC 43.13-1B table 11-9 and 11-67'),
  check: ({ visit, results, say }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, gauge, material }, index): Hit[] => {
      const result = results.electrical?.circuits[index];
      if (!result?.ampacity || result.continuousA <= result.ampacity.currentA) return [];
      const { continuousA, ampacity } = result;
      return [
        {
          path: ['electrical', 'circuits', index, 'gauge'],
          sentence: say.words`Circuit ${name}: ${say.plain(continuousA, 1)} A without end in wire ${conductorName({ gauge, material }, say)}, which carries ${say.plain(ampacity.currentA, 1)} A`,
          data: { continuousA, ampacityA: ampacity.currentA, gauge },
        },
      ];
    }),
};
