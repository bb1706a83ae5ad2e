import { currentA } from '../../calc/electrical/load.ts';
import { PHASE_NAMES } from '../../gate/phase-names.ts';
import { PHASES } from '../../record/electrical.ts';
import type { Electrical } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';

/** Returns every load with its current in each phase: the terms of the phase sums. */
export function loadRows({ fmt }: PackContext, { loads, system }: Electrical): View {
  return {
    phaseHeads: PHASES.map((phase) => fmt.text(PHASE_NAMES[phase])),
    loads: loads.map((load) => ({
      name: load.name,
      change: fmt.term(load.change),
      duty: fmt.term(load.duty),
      bus: load.bus,
      essential: load.isEssential ? '✓' : '',
      currents: PHASES.map((phase) => {
        const amps = currentA(load, phase, system);
        return amps === 0 ? DASH : fmt.plain(amps, 2);
      }),
      measured: load.measuredA === undefined ? DASH : fmt.plain(load.measuredA, 2),
    })),
  };
}
