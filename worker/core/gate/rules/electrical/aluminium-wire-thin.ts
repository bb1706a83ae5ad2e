import { type Conductor, MIN_ALUMINIUM } from '../../../calc/electrical/wire-table.ts';
import { isThinner } from '../../../record/wire-size.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { type EntryHit, hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { conductorName, wireName } from '../../wire-name.ts';

export const aluminiumWireThin: Rule = {
  code: 'ALUMINIUM_WIRE_THIN',
  severity: 'caution',
  meaning: 'An aluminium wire is thinner than No. 8 and can break at bends and clamps',
  remedy: m.aluminiumWireThin_remedy,
  source: read('AC 43.13-1B 11-66, note on aluminium wire: smaller than No. 8 is not recommended'),
  check: ({ visit }) => [
    ...hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, (circuit) =>
      hitOf(circuit, said(m.aluminiumWireThin_circuit, { circuit: circuit.name })),
    ),
    ...hitsIn(['wiring', 'wires'], visit.wiring?.wires, (wire) =>
      wire.change === 'removed' ? undefined : hitOf(wire, said(m.aluminiumWireThin_wire, { wire: wireName(wire) })),
    ),
  ],
};

function hitOf(conductor: Conductor, name: Value): EntryHit | undefined {
  if (conductor.material !== 'aluminium' || !isThinner(conductor.gauge, MIN_ALUMINIUM)) return undefined;
  return {
    field: 'gauge',
    sentence: said(m.aluminiumWireThin_wireAluminiumNotRecommended, {
      name,
      conductor: conductorName(conductor),
      leastAluminium: MIN_ALUMINIUM,
    }),
    data: { gauge: conductor.gauge },
  };
}
