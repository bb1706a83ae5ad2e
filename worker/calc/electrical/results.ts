import type { Electrical } from '../../visit/visit.ts';
import { type CircuitResult, circuitResult } from './circuit.ts';
import { batteryEndurance, type Endurance } from './endurance.ts';
import { loadByPhase, type PhaseLoad } from './load.ts';

/** Everything computed for the electrical system. */
export interface ElectricalResult {
  phases: PhaseLoad[];
  endurance: Endurance | undefined;
  /** In the order of the record. */
  circuits: CircuitResult[];
}

/** Load, endurance and circuits of a visit. */
export function electricalResults(electrical: Electrical): ElectricalResult {
  return {
    phases: loadByPhase(electrical),
    endurance: batteryEndurance(electrical),
    circuits: electrical.circuits.map((circuit) => circuitResult(circuit, electrical)),
  };
}
