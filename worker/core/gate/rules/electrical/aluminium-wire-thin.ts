import { type Conductor, MIN_ALUMINIUM } from '../../../calc/electrical/wire-table.ts';
import { isThinner } from '../../../record/wire-size.ts';
import * as m from '../../../text/generated/messages.ts';
import { said, type Value } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';
import { conductorName, wireName } from '../../wire-name.ts';

export const aluminiumWireThin: Rule = {
  code: 'ALUMINIUM_WIRE_THIN',
  severity: 'caution',
  meaning: 'An aluminium wire is thinner than No. 8: it breaks where it is bent or clamped',
  remedy: m.aluminiumWireThin_remedy,
  source: read('AC 43.13-1B 11-66, note on aluminium wire: smaller than No. 8 is not recommended'),
  check: ({ visit }) => [
    ...(visit.electrical?.circuits ?? []).flatMap((circuit, index) =>
      hitOf(circuit, said(m.aluminiumWireThin_circuit, { circuit: circuit.name }), [
        'electrical',
        'circuits',
        index,
        'gauge',
      ]),
    ),
    ...(visit.wiring?.wires ?? []).flatMap((wire, index) =>
      wire.change === 'removed'
        ? []
        : hitOf(wire, said(m.aluminiumWireThin_wire, { wire: wireName(wire) }), ['wiring', 'wires', index, 'gauge']),
    ),
  ],
};

function hitOf(conductor: Conductor, name: Value, path: Hit['path']): Hit[] {
  if (conductor.material !== 'aluminium' || !isThinner(conductor.gauge, MIN_ALUMINIUM)) return [];
  return [
    {
      path,
      sentence: said(m.aluminiumWireThin_wireAluminiumNotRecommended, {
        name,
        conductor: conductorName(conductor),
        leastAluminium: MIN_ALUMINIUM,
      }),
      data: { gauge: conductor.gauge },
    },
  ];
}
