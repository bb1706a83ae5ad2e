import type { Endurance } from '../../calc/electrical/endurance.ts';
import type { PhaseLoad } from '../../calc/electrical/load.ts';
import { PHASE_NAMES } from '../../gate/phase-names.ts';
import { dateOf, printDate } from '../../units/calendar.ts';
import { printNumber } from '../../units/rounding.ts';
import type { Electrical } from '../../visit/visit.ts';
import { loadChart } from '../chart/load-chart.ts';
import type { PackContext } from '../context.ts';
import { DASH, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { circuitRows } from './circuit-rows.ts';
import { common, sources } from './common.ts';
import { loadRows } from './load-rows.ts';

const SYSTEMS = { '14-volt': '14 V, battery 12 V', '28-volt': '28 V, battery 24 V' } as const;

const amps = (value: number | undefined): string => (value === undefined ? DASH : printNumber(value, 1));

export function electricalLoadAnalysisView(context: PackContext): View {
  const { visit, results, released } = context;
  const record = visit.electrical;
  const found = results.electrical;
  if (!record || !found) throw new Error('Cannot fill the electrical load analysis: the visit has none');
  const bars = found.phases.map(({ phase, continuousA, peakA, capacityA }) => ({
    name: PHASE_NAMES[phase],
    loadA: continuousA,
    peakA,
    capacityA,
  }));
  return {
    ...common(context),
    system: SYSTEMS[record.system],
    altitude: `${printNumber(record.altitudeFt, 0)} ft`,
    powerSources: record.sources.map(({ name, ratedA, regulatorA, isMonitored, monitoredBy }) => ({
      name,
      rating: `${amps(ratedA)} A${regulatorA === undefined ? '' : `, regulator ${amps(regulatorA)} A`}`,
      watchedBy: monitoredBy ?? (isMonitored ? 'NOT STATED BY WHAT' : 'nothing'),
    })),
    lowVoltage: lowVoltageText(record.lowVoltageWarning),
    chart: loadChart(bars),
    phases: found.phases.map(phaseRow),
    ...enduranceView(record, found.endurance),
    ...loadRows(record),
    ...circuitRows(record.circuits, found.circuits),
    signatures: [
      signatureOf(
        visit,
        visit.release?.by,
        'Analysis accepted by',
        released ? printDate(dateOf(released.releasedAt)) : DASH,
      ),
    ],
    ...sources(
      'The 80 % line is a rule of thumb, not a proof of adequate supply (AC 43.13-1B para 11-35, which also gives 13 V and 26 V for a low-voltage warning). Start and source failed are on the battery.',
      'Drop = R20 · L · I · (234.5 + T2) / 254.5, T2 = T1 + (TR − T1) · √(I / Imax) (AC 43.13-1B para 11-66; the form of T2 from memory). For aluminium 258.1 and 238.1. R20 and capacity of wire: table 11-9; aluminium by the copper wire two numbers thinner, as the note at 11-66 lets it, for table 11-10 was not readable. Limits of drop: table 11-6, from memory, supported by table 11-7; of main power wires and ground returns: FAA-H-8083-31 chapter 9. Protection: table 11-3; its column of breakers was read for 22 to 14 AWG alone, so that a breaker on thicker wire is held to the column of fuses.',
      'Loads and lengths as in the record. Electrical work: disconnect the battery first.',
    ),
  };
}

function lowVoltageText(warning: Electrical['lowVoltageWarning']): string {
  if (!warning) return 'not stated';
  if (!warning.isFitted) return 'none fitted';
  return warning.setPointV === undefined
    ? 'fitted, SET POINT NOT STATED'
    : `below ${printNumber(warning.setPointV, 1)} V`;
}

function phaseRow({ phase, before, continuousA, peakA, capacityA }: PhaseLoad): Record<string, string> {
  return {
    phase: PHASE_NAMES[phase],
    before: amps(before.continuousA),
    continuous: amps(continuousA),
    peak: amps(peakA),
    capacity: amps(capacityA),
    share: capacityA ? printNumber((continuousA / capacityA) * 100, 0) : DASH,
  };
}

function enduranceView({ battery }: Electrical, endurance: Endurance | undefined): View {
  if (!battery || !endurance) return { hasEndurance: false };
  return {
    hasEndurance: true,
    battery: `${printNumber(battery.capacityAh, 1)} Ah × ${printNumber(battery.usableFactor, 2)} = ${printNumber(endurance.usableAmpMinutes, 0)} A·min`,
    stretches: endurance.stretches.map(({ name, loadA, minutes, ampMinutes }) => ({
      name,
      load: amps(loadA),
      minutes: minutes === undefined ? 'no end' : printNumber(minutes, 1),
      used: printNumber(ampMinutes, 0),
    })),
    lasts: endurance.minutes === undefined ? 'without end' : `${printNumber(endurance.minutes, 1)} min`,
    needed: `${printNumber(endurance.neededMin, 0)} min`,
  };
}
