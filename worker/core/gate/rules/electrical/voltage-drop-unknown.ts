import { wireSize } from '../../../calc/electrical/wire-table.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { conductorName } from '../../wire-name.ts';

export const voltageDropUnknown: Rule = {
  code: 'VOLTAGE_DROP_UNKNOWN',
  severity: 'blocks',
  meaning: 'The voltage drop of a circuit was not measured, and no table gives the resistance of its wire',
  remedy: m.voltageDropUnknown_remedy,
  source: read('AC 43.13-1B 11-66: the drop follows from table 11-9, or is measured'),
  check: ({ visit }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, (circuit) => {
      if (wireSize(circuit) || circuit.measuredDropV !== undefined) return undefined;
      return {
        field: 'measuredDropV',
        sentence: said(m.voltageDropUnknown_circuitNoTableGives, {
          circuit: circuit.name,
          circuit2: conductorName(circuit),
        }),
        data: { gauge: circuit.gauge, material: circuit.material ?? 'copper' },
      };
    }),
};
