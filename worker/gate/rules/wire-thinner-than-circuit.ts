import { isThinner } from '../../visit/wire-size.ts';
import { type Hit, type Rule, read } from '../rule.ts';
import { wireName } from '../wire-name.ts';

export const wireThinnerThanCircuit: Rule = {
  code: 'WIRE_THINNER_THAN_CIRCUIT',
  severity: 'blocks',
  meaning: 'A wire is thinner than its circuit was computed with',
  remedy: 'Enter the thinnest wire of the run in the circuit, or replace the wire',
  source: read('AC 43.13-1B 11-48: the protector guards the wire'),
  check: ({ visit }) =>
    (visit.wiring?.wires ?? []).flatMap((wire, index): Hit[] => {
      const circuit = visit.electrical?.circuits.find(({ id }) => id === wire.circuit);
      if (!circuit || wire.change === 'removed' || !isThinner(wire.gauge, circuit.gauge)) return [];
      return [
        {
          path: ['wiring', 'wires', index, 'gauge'],
          sentence: `Wire ${wireName(wire)} is ${wire.gauge} AWG; circuit ${circuit.name} was computed with ${circuit.gauge} AWG`,
          data: { gauge: wire.gauge, circuitGauge: circuit.gauge },
        },
      ];
    }),
};
