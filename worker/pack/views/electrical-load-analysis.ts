import type { Endurance, PhaseLoad } from '../../calc/electrical/electrical-result.ts';
import { PHASE_NAMES } from '../../gate/phase-names.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { Printer } from '../../text/print.ts';
import type { Electrical } from '../../visit/visit.ts';
import { loadChart } from '../chart/load-chart.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { stretchName } from '../stretch-name.ts';
import { circuitRows } from './circuit-rows.ts';
import { common, sources } from './common.ts';
import { loadRows } from './load-rows.ts';
import { releaserSignature } from './releaser-signature.ts';

const SYSTEMS = {
  '14-volt': m.electricalLoadAnalysis_14VBattery12,
  '28-volt': m.electricalLoadAnalysis_28VBattery24,
} as const;

/** A current, or a dash. */
function amps(say: Printer, value: number | undefined): string {
  return value === undefined ? DASH : say.plain(value, 1);
}

export function electricalLoadAnalysisView(context: PackContext): View {
  const { visit, results, say } = context;
  const record = visit.electrical;
  const found = results.electrical;
  if (!record || !found) throw new Error('Cannot fill the electrical load analysis: the visit has none');
  const bars = found.phases.map(({ phase, continuousA, peakA, capacityA }) => ({
    name: say.text(PHASE_NAMES[phase]),
    loadA: continuousA,
    peakA,
    capacityA,
  }));
  return {
    ...common(context),
    system: say.text(SYSTEMS[record.system]),
    altitude: `${say.plain(record.altitudeFt, 0)} ft`,
    powerSources: record.sources.map(({ name, ratedA, regulatorA, isMonitored, monitoredBy }) => ({
      name,
      rating: `${amps(say, ratedA)} A${regulatorA === undefined ? '' : say.text(m.electricalLoadAnalysis_regulator, { amps: amps(say, regulatorA) })}`,
      watchedBy: monitoredBy ?? (isMonitored ? say.text(m.electricalLoadAnalysis_notStatedWhat) : say.text(m.nothing)),
    })),
    lowVoltage: lowVoltageText(context, record.lowVoltageWarning),
    chart: loadChart(bars, say),
    phases: found.phases.map((phase) => phaseRow(context, phase)),
    ...enduranceView(context, record, found.endurance),
    ...loadRows(context, record),
    ...circuitRows(context, record.circuits, found.circuits),
    signatures: releaserSignature(context, say.text(m.electricalLoadAnalysis_analysisAccepted)),
    ...sources(
      say.text(m.electricalLoadAnalysis_80LineRuleThumb),
      say.text(m.electricalLoadAnalysis_dropR20LI),
      say.text(m.electricalLoadAnalysis_loadsLengthsRecordElectrical),
    ),
  };
}

function lowVoltageText({ say }: PackContext, warning: Electrical['lowVoltageWarning']): string {
  if (!warning) return say.text(m.notStated);
  if (!warning.isFitted) return say.text(m.electricalLoadAnalysis_noneFitted);
  return warning.setPointV === undefined
    ? say.text(m.electricalLoadAnalysis_fittedSetPointNot)
    : say.text(m.electricalLoadAnalysis_belowV, { setPointV: say.plain(warning.setPointV, 1) });
}

function phaseRow(
  { say }: PackContext,
  { phase, before, continuousA, peakA, capacityA }: PhaseLoad,
): Record<string, string> {
  return {
    phase: say.text(PHASE_NAMES[phase]),
    before: amps(say, before.continuousA),
    continuous: amps(say, continuousA),
    peak: amps(say, peakA),
    capacity: amps(say, capacityA),
    share: capacityA ? say.plain((continuousA / capacityA) * 100, 0) : DASH,
  };
}

function enduranceView({ say }: PackContext, { battery }: Electrical, endurance: Endurance | undefined): View {
  if (!battery || !endurance) return { hasEndurance: false };
  return {
    hasEndurance: true,
    battery: `${say.plain(battery.capacityAh, 1)} Ah × ${say.plain(battery.usableFactor, 2)} = ${say.plain(endurance.usableAmpMinutes, 0)} A·min`,
    stretches: endurance.stretches.map(({ use, loadA, minutes, ampMinutes }) => ({
      name: say.value(stretchName(use)),
      load: amps(say, loadA),
      minutes: minutes === undefined ? say.text(m.electricalLoadAnalysis_noEnd) : say.plain(minutes, 1),
      used: say.plain(ampMinutes, 0),
    })),
    lasts:
      endurance.minutes === undefined
        ? say.text(m.electricalLoadAnalysis_withoutEnd)
        : `${say.plain(endurance.minutes, 1)} min`,
    needed: `${say.plain(endurance.neededMin, 0)} min`,
  };
}
