import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const groundReturnUnstated: Rule = {
  code: 'GROUND_RETURN_UNSTATED',
  severity: 'caution',
  meaning: 'Neither the ground return nor the voltage drop of a main power wire was measured',
  remedy: phrase`Measure the ground return, or the drop over the whole circuit under load, and enter it`,
  source: read('FAA-H-8083-31 chapter 9, voltage drop in wires: ground return measured, or the drop over the circuit'),
  check: ({ visit, say }) =>
    (visit.electrical?.circuits ?? []).flatMap((circuit, index): Hit[] => {
      const isMeasured = circuit.groundReturnMilliohm !== undefined || circuit.measuredDropV !== undefined;
      if (!circuit.mainFeeder || isMeasured) return [];
      return [
        {
          path: ['electrical', 'circuits', index, 'groundReturnMilliohm'],
          sentence: say.words`Main power wire ${circuit.name}: its ground return was not measured`,
          data: { circuit: circuit.id },
        },
      ];
    }),
};
