import { wireSize } from '../../../calc/electrical/wire-table.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const wireRatingUnknown: Rule = {
  code: 'WIRE_RATING_UNKNOWN',
  severity: 'blocks',
  meaning: 'The rating of a wire is outside the table, and no chart value is stated',
  remedy: m.wireRatingUnknown_remedy,
  source: read('AC 43.13-1B table 11-9, note 1: 33 or 9 wires, 20 % used, 60,000 ft'),
  check: ({ visit, results }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ name, gauge, material }, index) => {
      if (results.electrical?.circuits[index]?.ampacity) return undefined;
      const wire = conductorName({ gauge, material });
      return {
        field: 'rating',
        sentence: wireSize({ gauge, material })
          ? said(m.wireRatingUnknown_circuitTableNotRate, { name, wire })
          : said(m.wireRatingUnknown_circuitNoTableRates, { name, wire }),
        data: { gauge },
      };
    }),
};
