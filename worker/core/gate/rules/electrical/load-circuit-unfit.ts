import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const loadCircuitUnfit: Rule = {
  code: 'LOAD_CIRCUIT_UNFIT',
  severity: 'caution',
  meaning: 'A load is on a main power wire, or on a circuit whose other loads are on another bus',
  remedy: m.loadCircuitUnfit_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { circuits = [], loads = [] } = visit.electrical ?? {};
    const present = loads.filter(({ change }) => change !== 'removed');
    return hitsIn(['electrical', 'loads'], loads, ({ id, name, bus, circuit: named, change }) => {
      const circuit = circuits.find((each) => each.id === named);
      if (change === 'removed' || !circuit) return undefined;
      const data = { load: id, circuit: circuit.id };
      if (circuit.mainFeeder)
        return {
          field: 'circuit',
          sentence: said(m.loadCircuitUnfit_mainWire, { name, circuit: circuit.name }),
          data,
        };
      const other = present.find((each) => each.circuit === named && each.bus !== bus);
      if (!other) return undefined;
      return {
        field: 'bus',
        sentence: said(m.loadCircuitUnfit_otherBus, {
          name,
          bus,
          other: other.name,
          otherBus: other.bus,
          circuit: circuit.name,
        }),
        data,
      };
    });
  },
};
