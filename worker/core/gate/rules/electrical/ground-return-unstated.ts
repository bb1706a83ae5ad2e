import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const groundReturnUnstated: Rule = {
  code: 'GROUND_RETURN_UNSTATED',
  severity: 'caution',
  meaning: 'Neither the ground return nor the voltage drop of a main power wire was measured',
  remedy: m.groundReturnUnstated_remedy,
  source: read('FAA-H-8083-31 chapter 9, voltage drop in wires: ground return measured, or the drop over the circuit'),
  check: ({ visit }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, (circuit) => {
      const isMeasured = circuit.groundReturnMilliohm !== undefined || circuit.measuredDropV !== undefined;
      if (!circuit.mainFeeder || isMeasured) return undefined;
      return {
        field: 'groundReturnMilliohm',
        sentence: said(m.groundReturnUnstated_mainPowerWireGround, { circuit: circuit.name }),
        data: { circuit: circuit.id },
      };
    }),
};
