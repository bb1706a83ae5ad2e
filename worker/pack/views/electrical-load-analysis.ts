import type { Endurance, PhaseLoad } from '../../calc/electrical/electrical-result.ts';
import { PHASE_NAMES } from '../../gate/phase-names.ts';
import { DASH } from '../../text/dash.ts';
import type { Printer } from '../../text/print.ts';
import type { Electrical } from '../../visit/visit.ts';
import { phrase } from '../../words/words.ts';
import { loadChart } from '../chart/load-chart.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { stretchName } from '../stretch-name.ts';
import { circuitRows } from './circuit-rows.ts';
import { common, sources } from './common.ts';
import { loadRows } from './load-rows.ts';
import { releaserSignature } from './releaser-signature.ts';

const SYSTEMS = { '14-volt': phrase`14 V, battery 12 V`, '28-volt': phrase`28 V, battery 24 V` } as const;

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
    name: say.term(PHASE_NAMES[phase]),
    loadA: continuousA,
    peakA,
    capacityA,
  }));
  return {
    ...common(context),
    system: say.term(SYSTEMS[record.system]),
    altitude: `${say.plain(record.altitudeFt, 0)} ft`,
    powerSources: record.sources.map(({ name, ratedA, regulatorA, isMonitored, monitoredBy }) => ({
      name,
      rating: `${amps(say, ratedA)} A${regulatorA === undefined ? '' : say.words`, regulator ${amps(say, regulatorA)} A`}`,
      watchedBy: monitoredBy ?? (isMonitored ? say.words`NOT STATED BY WHAT` : say.words`nothing`),
    })),
    lowVoltage: lowVoltageText(context, record.lowVoltageWarning),
    chart: loadChart(bars, say),
    phases: found.phases.map((phase) => phaseRow(context, phase)),
    ...enduranceView(context, record, found.endurance),
    ...loadRows(context, record),
    ...circuitRows(context, record.circuits, found.circuits),
    signatures: releaserSignature(context, say.words`Analysis accepted by`),
    ...sources(
      say.words`The 80 % line is a rule of thumb, not a proof of adequate supply (AC 43.13-1B para 11-35, which also gives 13 V and 26 V for a low-voltage warning). Start and source failed are on the battery.`,
      say.words`Drop = R20 · L · I · (234.5 + T2) / 254.5, T2 = T1 + (TR − T1) · √(I / Imax) (AC 43.13-1B para 11-66; the form of T2 from memory). For aluminium 258.1 and 238.1. R20 and capacity of wire: table 11-9; aluminium by the copper wire two numbers thinner, as the note at 11-66 lets it, for table 11-10 was not readable. Limits of drop: table 11-6, from memory, supported by table 11-7; of main power wires and ground returns: FAA-H-8083-31 chapter 9. Protection: table 11-3; its column of breakers was read for 22 to 14 AWG alone, so that a breaker on thicker wire is held to the column of fuses.`,
      say.words`Loads and lengths as in the record. Electrical work: disconnect the battery first.`,
    ),
  };
}

function lowVoltageText({ say }: PackContext, warning: Electrical['lowVoltageWarning']): string {
  if (!warning) return say.words`not stated`;
  if (!warning.isFitted) return say.words`none fitted`;
  return warning.setPointV === undefined
    ? say.words`fitted, SET POINT NOT STATED`
    : say.words`below ${say.plain(warning.setPointV, 1)} V`;
}

function phaseRow(
  { say }: PackContext,
  { phase, before, continuousA, peakA, capacityA }: PhaseLoad,
): Record<string, string> {
  return {
    phase: say.term(PHASE_NAMES[phase]),
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
      name: stretchName(use, say),
      load: amps(say, loadA),
      minutes: minutes === undefined ? say.words`no end` : say.plain(minutes, 1),
      used: say.plain(ampMinutes, 0),
    })),
    lasts: endurance.minutes === undefined ? say.words`without end` : `${say.plain(endurance.minutes, 1)} min`,
    needed: `${say.plain(endurance.neededMin, 0)} min`,
  };
}
