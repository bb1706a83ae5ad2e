import { wireSize } from '../../../calc/electrical/wire-table.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const wireRatingUnknown: Rule = {
  code: 'WIRE_RATING_UNKNOWN',
  severity: 'blocks',
  meaning: 'What a wire can carry is not known: it lies outside the table, and no chart was read',
  remedy: m.wireRatingUnknown_remedy,
  source: read('AC 43.13-1B table 11-9, note 1: 70 °C, 33 wires, 20 % used, 60,000 ft'),
  check: ({ visit, results }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, gauge, material }, index): Hit[] => {
      if (results.electrical?.circuits[index]?.ampacity) return [];
      const wire = conductorName({ gauge, material });
      return [
        {
          path: ['electrical', 'circuits', index, 'rating'],
          sentence: wireSize({ gauge, material })
            ? said(m.wireRatingUnknown_circuitTableNotRate, { name, wire })
            : said(m.wireRatingUnknown_circuitNoTableRates, { name, wire }),
          data: { gauge },
        },
      ];
    }),
};
