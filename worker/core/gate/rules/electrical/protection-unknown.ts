import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const protectionUnknown: Rule = {
  code: 'PROTECTION_UNKNOWN',
  severity: 'blocks',
  meaning: 'What protector the wire allows is not known: neither chart nor record gives it',
  remedy: m.protectionUnknown_remedy,
  source: read('AC 43.13-1B table 11-3, sizes 22 to 0'),
  check: ({ visit, results }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, gauge, material, protection }, index): Hit[] => {
      const result = results.electrical?.circuits[index];
      if (!protection || !result || result.protectionLimit) return [];
      return [
        {
          path: ['electrical', 'circuits', index, 'protection'],
          sentence: said(m.protectionUnknown_circuitNoChartGives, {
            name,
            conductor: conductorName({ gauge, material }),
          }),
          data: { gauge },
        },
      ];
    }),
};
