import { type Conductor, copperGauge } from '../../../calc/electrical/wire-table.ts';
import { isThinner } from '../../../record/wire-size.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';
import { conductorName, wireName } from '../../wire-name.ts';

export const wireThinnerThanCircuit: Rule = {
  code: 'WIRE_THINNER_THAN_CIRCUIT',
  severity: 'blocks',
  meaning: 'A wire is thinner than the wire in the calculation of its circuit',
  remedy: m.wireThinnerThanCircuit_remedy,
  source: read('AC 43.13-1B 11-48: the protector guards the wire'),
  check: ({ visit }) =>
    hitsIn(['wiring', 'wires'], visit.wiring?.wires, (wire) => {
      const circuit = visit.electrical?.circuits.find(({ id }) => id === wire.circuit);
      if (!circuit || wire.change === 'removed' || !carriesLess(wire, circuit)) return undefined;
      return {
        field: 'gauge',
        sentence: said(m.wireThinnerThanCircuit_wireCircuitComputed, {
          wire: wireName(wire),
          wire2: conductorName(wire),
          circuit: circuit.name,
          circuit2: conductorName(circuit),
        }),
        data: { gauge: wire.gauge, circuitGauge: circuit.gauge },
      };
    }),
};

/** Compares gauges of the same metal; for different metals, the gauges of equivalent copper wires. */
function carriesLess(wire: Conductor, circuit: Conductor): boolean {
  if ((wire.material ?? 'copper') === (circuit.material ?? 'copper')) return isThinner(wire.gauge, circuit.gauge);
  const [own, needed] = [copperGauge(wire), copperGauge(circuit)];
  return own === undefined || needed === undefined || isThinner(own, needed);
}
