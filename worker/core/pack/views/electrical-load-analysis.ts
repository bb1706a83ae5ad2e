import type { Endurance, PhaseLoad } from '../../calc/electrical/electrical-result.ts';
import { PHASE_NAMES } from '../../gate/phase-names.ts';
import type { Electrical } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import type { Bound, Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { loadChart } from '../chart/load-chart.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { stretchName } from '../stretch-name.ts';
import { accepted } from './accepted.ts';
import { circuitRows } from './circuit-rows.ts';
import { common, sources } from './common.ts';
import { durationText } from './duration.ts';
import { loadRows } from './load-rows.ts';
import { releaserSignature } from './releaser-signature.ts';
import { tractionView } from './traction.ts';

const SYSTEMS = {
  '14-volt': m.electricalLoadAnalysis_14VBattery12,
  '28-volt': m.electricalLoadAnalysis_28VBattery24,
} as const;

/** Returns a current, or a dash; what a source gives is rounded down. */
function amps(fmt: Formatter, value: number | undefined, bound?: Bound): string {
  return value === undefined ? DASH : fmt.plain(value, 1, bound);
}

export function electricalLoadAnalysisView(context: PackContext): View {
  const { visit, results, fmt } = context;
  const record = visit.electrical;
  const found = results.electrical;
  if (!record || !found) throw new Error('Cannot fill the electrical load analysis: the visit has none');
  const bars = found.phases.map(({ phase, continuousA, peakA, capacityA }) => ({
    name: fmt.text(PHASE_NAMES[phase]),
    loadA: continuousA,
    peakA,
    capacityA,
  }));
  return {
    ...common(context),
    ...accepted(context, '/electrical'),
    system: fmt.text(SYSTEMS[record.system]),
    altitude: `${fmt.plain(record.altitudeFt, 0)} ft`,
    powerSources: record.sources.map(({ name, ratedA, regulatorA, isMonitored, monitoredBy }) => ({
      name,
      rating: `${amps(fmt, ratedA, 'most')} A${regulatorA === undefined ? '' : fmt.text(m.electricalLoadAnalysis_regulator, { amps: amps(fmt, regulatorA, 'most') })}`,
      watchedBy: monitoredBy ?? (isMonitored ? fmt.text(m.electricalLoadAnalysis_notStatedWhat) : fmt.text(m.nothing)),
    })),
    lowVoltage: lowVoltageText(context, record.lowVoltageWarning),
    chart: loadChart(bars, fmt),
    phases: found.phases.map((phase) => phaseRow(context, phase)),
    ...enduranceView(context, record, found.endurance),
    ...loadRows(context, record),
    ...circuitRows(context, record.circuits, found.circuits),
    ...tractionView(context),
    signatures: releaserSignature(context, fmt.text(m.electricalLoadAnalysis_analysisAccepted)),
    ...sources(
      fmt.text(m.electricalLoadAnalysis_80LineRuleThumb),
      fmt.text(m.electricalLoadAnalysis_dropR20LI),
      fmt.text(m.electricalLoadAnalysis_loadsLengthsRecordElectrical),
    ),
  };
}

function lowVoltageText({ fmt }: PackContext, warning: Electrical['lowVoltageWarning']): string {
  if (!warning) return fmt.text(m.notStated);
  if (!warning.isFitted) return fmt.text(m.electricalLoadAnalysis_noneFitted);
  return warning.setPointV === undefined
    ? fmt.text(m.electricalLoadAnalysis_fittedSetPointNot)
    : fmt.text(m.electricalLoadAnalysis_belowV, { setPointV: fmt.plain(warning.setPointV, 1) });
}

function phaseRow(
  { fmt }: PackContext,
  { phase, before, continuousA, peakA, capacityA }: PhaseLoad,
): Record<string, string> {
  return {
    phase: fmt.text(PHASE_NAMES[phase]),
    before: amps(fmt, before.continuousA),
    continuous: amps(fmt, continuousA),
    peak: amps(fmt, peakA),
    capacity: amps(fmt, capacityA, 'most'),
    share: capacityA ? fmt.plain((continuousA / capacityA) * 100, 0) : DASH,
  };
}

function enduranceView({ fmt }: PackContext, { battery }: Electrical, endurance: Endurance | undefined): View {
  if (!battery || !endurance) return { hasEndurance: false };
  const factor = fmt.asIs(battery.usableFactor);
  return {
    hasEndurance: true,
    battery: `${fmt.plain(battery.capacityAh, 1)} Ah × ${factor} = ${fmt.plain(endurance.usableAmpMinutes, 0)} A·min`,
    stretches: endurance.stretches.map(({ use, loadA, minutes, ampMinutes }) => ({
      name: fmt.value(stretchName(use)),
      load: amps(fmt, loadA),
      minutes: minutes === undefined ? fmt.text(m.electricalLoadAnalysis_noEnd) : fmt.plain(minutes, 0, 'most'),
      used: fmt.plain(ampMinutes, 0),
    })),
    lasts:
      endurance.minutes === undefined
        ? fmt.text(m.electricalLoadAnalysis_withoutEnd)
        : durationText(endurance.minutes, fmt),
    needed: `${fmt.asIs(endurance.neededMin)}\u00a0min`,
    allowance:
      battery.allowance === undefined
        ? fmt.text(m.electricalLoadAnalysis_allowanceUnstated, { factor })
        : fmt.text(m.electricalLoadAnalysis_allowance, { factor, allowance: battery.allowance }),
  };
}
