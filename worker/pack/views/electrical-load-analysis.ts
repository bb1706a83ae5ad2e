import type { CircuitResult } from '../../calc/electrical/circuit.ts';
import type { Endurance } from '../../calc/electrical/endurance.ts';
import type { PhaseLoad } from '../../calc/electrical/load.ts';
import { PHASE_NAMES } from '../../gate/phase-names.ts';
import { printNumber } from '../../units/rounding.ts';
import type { Visit } from '../../visit/visit.ts';
import { loadChart } from '../chart/load-chart.ts';
import type { PackContext } from '../context.ts';
import { DASH, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';

type Electrical = NonNullable<Visit['electrical']>;

const amps = (value: number | undefined): string => (value === undefined ? DASH : printNumber(value, 1));

export function electricalLoadAnalysisView(context: PackContext): View {
  const { visit, results } = context;
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
    system: record.system,
    altitude: `${printNumber(record.altitudeFt, 0)} ft`,
    powerSources: record.sources.map(({ name, ratedA, regulatorA }) => ({
      name,
      rating: `${amps(ratedA)} A${regulatorA === undefined ? '' : `, regulator ${amps(regulatorA)} A`}`,
    })),
    chart: loadChart(bars),
    phases: found.phases.map(phaseRow),
    ...enduranceView(record, found.endurance),
    loads: record.loads.map((load) => loadRow(load)),
    hasCircuits: found.circuits.length > 0,
    circuits: found.circuits.map((circuit, index) => circuitRow(record.circuits[index], circuit)),
    signatures: [signatureOf(visit, visit.release?.by, 'Analysis accepted by', DASH)],
    ...sources(
      'The 80 % line is a rule of thumb, not a proof of adequate supply (AC 43.13-1B para 11-35). Drop limits: AC 43.13-1B table 11-6 (from memory, supported by 11-7). Wire: table 11-9; protection: table 11-3.',
      'Loads and lengths as in the record. Electrical work: disconnect the battery first.',
    ),
  };
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

function loadRow(load: Electrical['loads'][number]): Record<string, string> {
  return {
    name: load.name,
    change: load.change,
    duty: load.duty,
    bus: load.bus,
    essential: load.isEssential ? '✓' : '',
    measured: amps(load.measuredA),
  };
}

function circuitRow(
  circuit: Electrical['circuits'][number] | undefined,
  result: CircuitResult,
): Record<string, string> {
  const drop = result.peakDrop ?? result.continuousDrop;
  const protection = circuit?.protection;
  return {
    name: circuit?.name ?? result.id,
    wire: `${circuit?.gauge ?? DASH} AWG`,
    run: circuit ? printNumber(circuit.runM, 1) : DASH,
    load: `${amps(result.continuousA)} / ${amps(result.peakA)}`,
    carries: amps(result.ampacity?.currentA),
    protection: protection ? `${protection.kind} ${amps(protection.ratingA)}` : 'none',
    allowed: amps(result.protectionLimit?.limitA),
    drop: drop ? printNumber(drop.dropV, 2) : DASH,
    limit: drop ? printNumber(drop.limitV, 1) : DASH,
  };
}
