import type { Pin, Wire, WireEnd, Wiring } from '../../record/visit.ts';

/** A wire seen from one of its ends. */
export interface Connection {
  /** Index of the wire in the record. */
  index: number;
  wire: Wire;
  to: WireEnd;
  /** Set if the wire was followed from its `from` end. */
  isForward: boolean;
}

/** Name of a wire end: a pin of a connector, or a point. */
export type NodeKey = string;

/** Returns the name of a wire end: `J101/5`, or the point only. */
export function nodeKey({ at, pin }: WireEnd): NodeKey {
  return pin === undefined ? at : `${at}/${pin}`;
}

/** Connections from every wire end, in both directions: a wire from A to B also connects B to A. */
export interface PinGraph {
  /** Every contact of every connector. */
  pins: ReadonlyMap<NodeKey, { pin: Pin; path: readonly (string | number)[] }>;
  connections: ReadonlyMap<NodeKey, readonly Connection[]>;
}

/** Returns the graph of the wires in the aircraft after the visit. */
export function pinGraph({ connectors, wires }: Wiring): PinGraph {
  const pins = new Map<NodeKey, { pin: Pin; path: readonly (string | number)[] }>();
  for (const [i, { id, pins: contacts }] of connectors.entries()) {
    for (const [j, pin] of contacts.entries()) {
      const key = nodeKey({ at: id, pin: pin.pin });
      if (!pins.has(key)) pins.set(key, { pin, path: ['wiring', 'connectors', i, 'pins', j] });
    }
  }
  const connections = new Map<NodeKey, Connection[]>();
  const add = (from: WireEnd, connection: Connection): void => {
    const key = nodeKey(from);
    const known = connections.get(key);
    if (known) known.push(connection);
    else connections.set(key, [connection]);
  };
  for (const [index, wire] of wires.entries()) {
    if (wire.change === 'removed') continue;
    add(wire.from, { index, wire, to: wire.to, isForward: true });
    add(wire.to, { index, wire, to: wire.from, isForward: false });
  }
  return { pins, connections };
}
