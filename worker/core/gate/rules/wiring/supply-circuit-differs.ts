import { nodeKey } from '../../../calc/wiring/pin-graph.ts';
import type { Visit, Wire } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule, type RuleInput } from '../../rule.ts';
import { wireKey, wireName } from '../../wire-name.ts';

export const supplyCircuitDiffers: Rule = {
  code: 'SUPPLY_CIRCUIT_DIFFERS',
  severity: 'caution',
  meaning: 'A supply wire names no circuit, or wire, protection and load name different circuits',
  remedy: m.supplyCircuitDiffers_remedy,
  source: PRACTICE,
  check: (input) => [...ofPoints(input), ...ofWires(input), ...ofItems(input)],
};

/** Breakers and fuses without a circuit. */
function ofPoints({ visit: { wiring, electrical } }: RuleInput) {
  return hitsIn(['wiring', 'points'], electrical && wiring?.points, ({ id, name, kind, circuit }) =>
    kind === 'protection' && circuit === undefined
      ? { field: 'circuit', sentence: said(m.supplyCircuitDiffers_point, { name }), data: { point: id } }
      : undefined,
  );
}

/** Wires at a breaker, a fuse or a supply contact, against the circuit of that. */
function ofWires({ visit: { wiring }, results }: RuleInput) {
  return hitsIn(['wiring', 'wires'], wiring?.wires, (wire) => {
    if (!wiring || wire.change === 'removed') return undefined;
    const keys = [nodeKey(wire.from), nodeKey(wire.to)];
    const nets = (results.wiring?.nets ?? []).filter(({ pins }) =>
      pins.some(({ key, pin }) => pin.direction === 'power' && keys.includes(key)),
    );
    const kinds = pointsOf(wire, wiring).map(({ kind }) => kind);
    const due = new Set([
      ...nets.flatMap(({ circuits }) => circuits),
      ...pointsOf(wire, wiring).flatMap(({ circuit }) => circuit ?? []),
    ]);
    const isSupply = nets.length > 0 || kinds.includes('protection') || kinds.includes('bus');
    if (!isSupply || (wire.circuit !== undefined && (due.size === 0 || due.has(wire.circuit)))) return undefined;
    return {
      field: 'circuit',
      sentence:
        wire.circuit === undefined
          ? said(m.supplyCircuitDiffers_wireWithout, { wire: wireName(wire) })
          : said(m.supplyCircuitDiffers_wire, { wire: wireName(wire), due: list([...due]), circuit: wire.circuit }),
      data: { wire: wireKey(wire) },
    };
  });
}

type Wiring = NonNullable<Visit['wiring']>;

const pointsOf = ({ from, to }: Wire, { points }: Wiring): Wiring['points'] =>
  points.filter(({ id }) => id === from.at || id === to.at);

/** Circuits of the loads of an item, against the protection that its supply contact reaches. */
function ofItems({ visit: { wiring, electrical }, results }: RuleInput) {
  return hits(results.wiring?.nets, ({ pins, circuits }) =>
    hits(pins, ({ key, pin, path }) => {
      const [, , index] = path;
      const item = wiring?.connectors[Number(index)]?.item;
      if (pin.direction !== 'power' || item === undefined || circuits.length === 0) return undefined;
      const loads = electrical?.loads.filter((load) => load.item === item && load.change !== 'removed') ?? [];
      const stated = [...new Set(loads.flatMap(({ circuit }) => circuit ?? []))];
      if (stated.length === 0 || stated.some((circuit) => circuits.includes(circuit))) return undefined;
      return {
        path,
        sentence: said(m.supplyCircuitDiffers_item, {
          pin: key,
          item,
          stated: list(stated),
          circuits: list([...circuits]),
        }),
        data: { pin: key, item },
      };
    }),
  );
}
