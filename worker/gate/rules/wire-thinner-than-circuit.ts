import { type Conductor, copperGauge } from '../../calc/electrical/wire-table.ts';
import { isThinner } from '../../visit/wire-size.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';
import { conductorName, wireName } from '../wire-name.ts';

export const wireThinnerThanCircuit: Rule = {
  code: 'WIRE_THINNER_THAN_CIRCUIT',
  severity: 'blocks',
  meaning: 'A wire is thinner than its circuit was computed with',
  remedy: phrase`Enter the thinnest wire of the run in the circuit, or replace the wire`,
  source: read('AC 43.13-1B 11-48: the protector guards the wire'),
  check: ({ visit, say }) =>
    (visit.wiring?.wires ?? []).flatMap((wire, index): Hit[] => {
      const circuit = visit.electrical?.circuits.find(({ id }) => id === wire.circuit);
      if (!circuit || wire.change === 'removed' || !carriesLess(wire, circuit)) return [];
      return [
        {
          path: ['wiring', 'wires', index, 'gauge'],
          sentence: say.words`Wire ${wireName(wire, say)} is ${conductorName(wire, say)}; circuit ${circuit.name} was computed with ${conductorName(circuit, say)}`,
          data: { gauge: wire.gauge, circuitGauge: circuit.gauge },
        },
      ];
    }),
};

/** Of one metal the gauges compare; of two, the copper wires that they are computed by. */
function carriesLess(wire: Conductor, circuit: Conductor): boolean {
  if ((wire.material ?? 'copper') === (circuit.material ?? 'copper')) return isThinner(wire.gauge, circuit.gauge);
  const [own, needed] = [copperGauge(wire), copperGauge(circuit)];
  return own === undefined || needed === undefined || isThinner(own, needed);
}
