import { chargingA, currentA } from '../../calc/electrical/load.ts';
import { PHASE_NAMES } from '../../gate/phase-names.ts';
import { PHASES } from '../../record/electrical.ts';
import type { Electrical } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';

/** Returns every load, and the battery while it is charged, with its current in each phase: the terms of the phase sums. */
export function loadRows({ fmt }: PackContext, electrical: Electrical): View {
  const { loads, system, battery } = electrical;
  const current = (amps: number): string => (amps === 0 ? DASH : fmt.plain(amps, 2));
  const charging = {
    name: fmt.text(m.electricalLoadAnalysis_batteryCharging),
    change: DASH,
    duty: fmt.term('continuous'),
    bus: DASH,
    essential: '',
    currents: PHASES.map((phase) => current(chargingA(electrical, phase))),
    measured: DASH,
  };
  return {
    phaseHeads: PHASES.map((phase) => fmt.text(PHASE_NAMES[phase])),
    loads: loads.map((load) => ({
      name: load.name,
      change: fmt.term(load.change),
      duty: fmt.term(load.duty),
      bus: load.bus,
      essential: load.isEssential ? '✓' : '',
      currents: PHASES.map((phase) => current(currentA(load, phase, system))),
      measured: load.measuredA === undefined ? DASH : fmt.plain(load.measuredA, 2),
    })),
    charging: battery?.charging ? [charging] : [],
  };
}
