import { nodeKey } from '../../../calc/wiring/pin-graph.ts';
import type { WiringResult } from '../../../calc/wiring/results.ts';
import type { Wiring } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';
import { wireName } from '../../wire-name.ts';

export const wireEndOpen: Rule = {
  code: 'WIRE_END_OPEN',
  severity: 'blocks',
  meaning: 'A wire ends at nothing that the record has, or a contact that carries a signal has no wire',
  remedy: m.wireEndOpen_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    visit.wiring && results.wiring ? [...looseWires(visit.wiring), ...emptyPins(visit.wiring, results.wiring)] : [],
};

function looseWires({ wires, connectors, points }: Wiring): Hit[] {
  const places = new Set([
    ...points.map(({ id }) => nodeKey({ at: id })),
    ...connectors.flatMap(({ id, pins }) => pins.map(({ pin }) => nodeKey({ at: id, pin }))),
  ]);
  return wires.flatMap((wire, index) =>
    (['from', 'to'] as const).flatMap((end): Hit[] => {
      const key = nodeKey(wire[end]);
      if (wire.change === 'removed' || places.has(key)) return [];
      return [
        {
          path: ['wiring', 'wires', index, end],
          sentence: said(m.wireEndOpen_wireEndsRecordNot, { wire: wireName(wire), key }),
          data: { at: key },
        },
      ];
    }),
  );
}

function emptyPins({ connectors }: Wiring, { graph }: WiringResult): Hit[] {
  return connectors.flatMap(({ id, pins }, i) =>
    pins.flatMap(({ pin, signal, direction }, j): Hit[] => {
      if (direction === 'spare' || graph.connections.has(nodeKey({ at: id, pin }))) return [];
      return [
        {
          path: ['wiring', 'connectors', i, 'pins', j],
          sentence: said(m.wireEndOpen_noWireLeadsPin, { id, pin, signal }),
          data: { connector: id, pin },
        },
      ];
    }),
  );
}
