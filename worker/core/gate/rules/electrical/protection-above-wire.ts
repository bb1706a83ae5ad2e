import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const protectionAboveWire: Rule = {
  code: 'PROTECTION_ABOVE_WIRE',
  severity: 'blocks',
  meaning: 'The breaker or fuse is greater than the wire allows',
  remedy: m.protectionAboveWire_remedy,
  source: read('AC 43.13-1B table 11-3 and 11-48'),
  check: ({ visit, results }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, gauge, material, protection }, index): Hit[] => {
      const limit = results.electrical?.circuits[index]?.protectionLimit;
      if (!protection || !limit || isAtMost(protection.ratingA, limit.limitA)) return [];
      const [ratingText, limitText] = figure.plainApart(protection.ratingA, limit.limitA, 1);
      return [
        {
          path: ['electrical', 'circuits', index, 'protection', 'ratingA'],
          sentence: said(m.protectionAboveWire_circuitWireAllows, {
            name,
            kind: termOf(protection.kind),
            rating: ratingText,
            conductor: conductorName({ gauge, material }),
            limit: limitText,
          }),
          data: { ratingA: protection.ratingA, limitA: limit.limitA, gauge },
        },
      ];
    }),
};
