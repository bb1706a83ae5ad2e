import { currentA } from '../../calc/electrical/load.ts';
import { PHASE_NAMES } from '../../gate/phase-names.ts';
import { printNumber } from '../../units/rounding.ts';
import { PHASES } from '../../visit/electrical.ts';
import type { Electrical } from '../../visit/visit.ts';
import { DASH } from '../people.ts';
import type { View } from '../render.ts';

/** Every load with its current in each phase: what the sums of the phases are made of. */
export function loadRows({ loads, system }: Electrical): View {
  return {
    phaseHeads: PHASES.map((phase) => PHASE_NAMES[phase]),
    loads: loads.map((load) => ({
      name: load.name,
      change: load.change,
      duty: load.duty,
      bus: load.bus,
      essential: load.isEssential ? '✓' : '',
      currents: PHASES.map((phase) => {
        const amps = currentA(load, phase, system);
        return amps === 0 ? DASH : printNumber(amps, 2);
      }),
      measured: load.measuredA === undefined ? DASH : printNumber(load.measuredA, 2),
    })),
  };
}
