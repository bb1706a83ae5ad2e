import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const loadCircuitUnstated: Rule = {
  code: 'LOAD_CIRCUIT_UNSTATED',
  severity: 'caution',
  meaning: 'A load that the visit added or kept has no circuit in the record',
  remedy: m.loadCircuitUnstated_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.electrical?.loads ?? []).flatMap(({ name, change, circuit, id }, index): Hit[] => {
      if (change === 'removed' || circuit !== undefined) return [];
      return [
        {
          path: ['electrical', 'loads', index, 'circuit'],
          sentence: said(m.loadCircuitUnstated_noCircuitStatedWhat, { name }),
          data: { load: id },
        },
      ];
    }),
};
