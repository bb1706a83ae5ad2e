import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const protectionAboveWire: Rule = {
  code: 'PROTECTION_ABOVE_WIRE',
  severity: 'blocks',
  meaning: 'The rating of the breaker or fuse is higher than the wire allows',
  remedy: m.protectionAboveWire_remedy,
  source: read('AC 43.13-1B table 11-3 and 11-48'),
  check: ({ visit, results }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ name, gauge, material, protection }, index) => {
      const limit = results.electrical?.circuits[index]?.protectionLimit;
      if (!protection || !limit || isAtMost(protection.ratingA, limit.limitA)) return undefined;
      const [ratingText, limitText] = figure.plainApart(protection.ratingA, limit.limitA, 1);
      return {
        field: ['protection', 'ratingA'],
        sentence: said(m.protectionAboveWire_circuitWireAllows, {
          name,
          kind: termOf(protection.kind),
          rating: ratingText,
          conductor: conductorName({ gauge, material }),
          limit: limitText,
        }),
        data: { ratingA: protection.ratingA, limitA: limit.limitA, gauge },
      };
    }),
};
