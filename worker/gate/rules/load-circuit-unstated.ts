import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const loadCircuitUnstated: Rule = {
  code: 'LOAD_CIRCUIT_UNSTATED',
  severity: 'caution',
  meaning: 'A load that the visit added or kept has no circuit in the record',
  remedy: phrase`Trace its feeder and enter the circuit`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.electrical?.loads ?? []).flatMap(({ name, change, circuit, id }, index): Hit[] => {
      if (change === 'removed' || circuit !== undefined) return [];
      return [
        {
          path: ['electrical', 'loads', index, 'circuit'],
          sentence: say.words`No circuit is stated for ${name}: what protects it is not known`,
          data: { load: id },
        },
      ];
    }),
};
