import type { Electrical } from '../../record/visit.ts';
import { circuitResult } from './circuit.ts';
import type { ElectricalResult } from './electrical-result.ts';
import { batteryEndurance } from './endurance.ts';
import { loadByPhase } from './load.ts';

export type { ElectricalResult } from './electrical-result.ts';

/** Returns load, endurance and circuits of a visit. */
export function electricalResults(electrical: Electrical): ElectricalResult {
  return {
    phases: loadByPhase(electrical),
    endurance: batteryEndurance(electrical),
    circuits: electrical.circuits.map((circuit) => circuitResult(circuit, electrical)),
  };
}
