import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const protectionUnknown: Rule = {
  code: 'PROTECTION_UNKNOWN',
  severity: 'blocks',
  meaning: 'Neither chart nor record states the protection that the wire allows',
  remedy: m.protectionUnknown_remedy,
  source: read('AC 43.13-1B table 11-3, sizes 22 to 0'),
  check: ({ visit, results }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ name, gauge, material, protection }, index) => {
      const result = results.electrical?.circuits[index];
      if (!protection || !result || result.protectionLimit) return undefined;
      return {
        field: 'protection',
        sentence: said(m.protectionUnknown_circuitNoChartGives, {
          name,
          conductor: conductorName({ gauge, material }),
        }),
        data: { gauge },
      };
    }),
};
