import { type Conductor, LEAST_ALUMINIUM } from '../../calc/electrical/wire-table.ts';
import type { Printer } from '../../text/print.ts';
import { isThinner } from '../../visit/wire-size.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';
import { conductorName, wireName } from '../wire-name.ts';

export const aluminiumWireThin: Rule = {
  code: 'ALUMINIUM_WIRE_THIN',
  severity: 'caution',
  meaning: 'An aluminium wire is thinner than No. 8: it breaks where it is bent or clamped',
  remedy: phrase`Replace it by copper wire`,
  source: read('AC 43.13-1B 11-66, note on aluminium wire: smaller than No. 8 is not recommended'),
  check: ({ visit, say }) => [
    ...(visit.electrical?.circuits ?? []).flatMap((circuit, index) =>
      hitOf(say, circuit, say.words`Circuit ${circuit.name}`, ['electrical', 'circuits', index, 'gauge']),
    ),
    ...(visit.wiring?.wires ?? []).flatMap((wire, index) =>
      wire.change === 'removed'
        ? []
        : hitOf(say, wire, say.words`Wire ${wireName(wire, say)}`, ['wiring', 'wires', index, 'gauge']),
    ),
  ],
};

function hitOf(say: Printer, conductor: Conductor, name: string, path: Hit['path']): Hit[] {
  if (conductor.material !== 'aluminium' || !isThinner(conductor.gauge, LEAST_ALUMINIUM)) return [];
  return [
    {
      path,
      sentence: say.words`${name} is of wire ${conductorName(conductor, say)}; aluminium is not recommended below No. ${LEAST_ALUMINIUM}`,
      data: { gauge: conductor.gauge },
    },
  ];
}
