import { nodeKey } from '../../../calc/wiring/pin-graph.ts';
import type { WiringResult } from '../../../calc/wiring/results.ts';
import type { Wiring } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';
import { wireName } from '../../wire-name.ts';

export const wireEndOpen: Rule = {
  code: 'WIRE_END_OPEN',
  severity: 'blocks',
  meaning: 'A wire ends at a point not in the record, or a contact with a signal has no wire',
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
  return hitsIn(['wiring', 'wires'], wires, (wire) =>
    hits(['from', 'to'] as const, (end) => {
      const key = nodeKey(wire[end]);
      if (wire.change === 'removed' || places.has(key)) return undefined;
      return {
        field: end,
        sentence: said(m.wireEndOpen_wireEndsRecordNot, { wire: wireName(wire), key }),
        data: { at: key },
      };
    }),
  );
}

function emptyPins({ connectors }: Wiring, { graph }: WiringResult): Hit[] {
  return hitsIn(['wiring', 'connectors'], connectors, ({ id, pins }) =>
    hits(pins, ({ pin, signal, direction }, j) => {
      if (direction === 'spare' || graph.connections.has(nodeKey({ at: id, pin }))) return undefined;
      return {
        field: ['pins', j],
        sentence: said(m.wireEndOpen_noWireLeadsPin, { id, pin, signal }),
        data: { connector: id, pin },
      };
    }),
  );
}
