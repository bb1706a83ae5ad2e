import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const loadCircuitUnstated: Rule = {
  code: 'LOAD_CIRCUIT_UNSTATED',
  severity: 'caution',
  meaning: 'A load that was added or kept has no circuit in the record',
  remedy: m.loadCircuitUnstated_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['electrical', 'loads'], visit.electrical?.loads, ({ name, change, circuit, id }) => {
      if (change === 'removed' || circuit !== undefined) return undefined;
      return {
        field: 'circuit',
        sentence: said(m.loadCircuitUnstated_noCircuitStatedWhat, { name }),
        data: { load: id },
      };
    }),
};
