import { currentA } from '../../calc/electrical/load.ts';
import { PHASE_NAMES } from '../../gate/phase-names.ts';
import { DASH } from '../../text/dash.ts';
import { PHASES } from '../../visit/electrical.ts';
import type { Electrical } from '../../visit/visit.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';

/** Every load with its current in each phase: what the sums of the phases are made of. */
export function loadRows({ say }: PackContext, { loads, system }: Electrical): View {
  return {
    phaseHeads: PHASES.map((phase) => say.text(PHASE_NAMES[phase])),
    loads: loads.map((load) => ({
      name: load.name,
      change: say.term(load.change),
      duty: say.term(load.duty),
      bus: load.bus,
      essential: load.isEssential ? '✓' : '',
      currents: PHASES.map((phase) => {
        const amps = currentA(load, phase, system);
        return amps === 0 ? DASH : say.plain(amps, 2);
      }),
      measured: load.measuredA === undefined ? DASH : say.plain(load.measuredA, 2),
    })),
  };
}
