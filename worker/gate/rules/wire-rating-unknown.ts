import { wireSize } from '../../calc/electrical/wire-table.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';
import { conductorName } from '../wire-name.ts';

export const wireRatingUnknown: Rule = {
  code: 'WIRE_RATING_UNKNOWN',
  severity: 'blocks',
  meaning: 'What a wire can carry is not known: it lies outside the table, and no chart was read',
  remedy: phrase`Read free-air current, bundle and altitude factors off the charts and state them`,
  source: read('AC 43.13-1B table 11-9, note 1: 70 °C, 33 wires, 20 % used, 60,000 ft'),
  check: ({ visit, results, say }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, gauge, material }, index): Hit[] => {
      if (results.electrical?.circuits[index]?.ampacity) return [];
      const wire = conductorName({ gauge, material }, say);
      return [
        {
          path: ['electrical', 'circuits', index, 'rating'],
          sentence: wireSize({ gauge, material })
            ? say.words`Circuit ${name}: the table does not rate wire ${wire} in this bundle, place and altitude`
            : say.words`Circuit ${name}: no table rates wire ${wire}`,
          data: { gauge },
        },
      ];
    }),
};
