import type { Pin, Wiring } from '../../record/visit.ts';
import { type NodeKey, nodeKey, type PinGraph } from './pin-graph.ts';

type PointKind = Wiring['points'][number]['kind'];

/** A contact in a net. */
export interface NetPin {
  key: NodeKey;
  pin: Pin;
  path: readonly (string | number)[];
}

/** Contacts that are one conductor, and the points at which it ends. */
export interface Net {
  pins: NetPin[];
  /** Kinds of the points that it reaches. */
  reaches: ReadonlySet<PointKind>;
  /** Circuits whose protection it reaches. */
  circuits: readonly string[];
}

/** Points through which a conductor continues; every other kind of point ends it, so that a bus does not join all circuits on it. */
const THROUGH: ReadonlySet<PointKind> = new Set(['splice', 'terminal']);

/** Returns every net with a contact of a connector, in the order of the record. */
export function netsOf(wiring: Wiring, graph: PinGraph): Net[] {
  const points = new Map(wiring.points.map((point) => [point.id, point]));
  const seen = new Set<NodeKey>();
  const nets: Net[] = [];
  for (const start of graph.pins.keys()) {
    if (seen.has(start)) continue;
    nets.push(netFrom(start, graph, points, seen));
  }
  return nets;
}

function netFrom(
  start: NodeKey,
  graph: PinGraph,
  points: ReadonlyMap<string, Wiring['points'][number]>,
  seen: Set<NodeKey>,
): Net {
  const pins: NetPin[] = [];
  const reaches = new Set<PointKind>();
  const circuits = new Set<string>();
  const open = [start];
  const visited = new Set<NodeKey>(open);
  for (let key = open.pop(); key !== undefined; key = open.pop()) {
    const contact = graph.pins.get(key);
    const point = points.get(key);
    if (contact) {
      pins.push({ key, ...contact });
      seen.add(key);
    }
    if (point) {
      reaches.add(point.kind);
      if (point.circuit !== undefined) circuits.add(point.circuit);
      if (!THROUGH.has(point.kind)) continue;
    }
    for (const { to } of graph.connections.get(key) ?? []) {
      const next = nodeKey(to);
      if (visited.has(next)) continue;
      visited.add(next);
      open.push(next);
    }
  }
  return { pins, reaches, circuits: [...circuits] };
}
