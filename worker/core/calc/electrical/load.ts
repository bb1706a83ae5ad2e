import { PHASES, type Phase } from '../../record/electrical.ts';
import type { Electrical, Load } from '../../record/visit.ts';
import { interpolate } from '../numbers/interpolate.ts';
import type { PhaseLoad, Sum } from './electrical-result.ts';

/** Regulated voltage, and voltage on the battery only, which convert power to current. */
export const REGULATED_V: Readonly<Record<Electrical['system'], number>> = { '14-volt': 14, '28-volt': 28 };
const BATTERY_V: Readonly<Record<Electrical['system'], number>> = { '14-volt': 12, '28-volt': 24 };

/** Phases on battery power: the source does not turn yet, or has failed. */
const ON_BATTERY: ReadonlySet<Phase> = new Set(['start', 'sourceFailed']);

/**
 * Returns the current of a load in one phase in amperes; from its power if no current is stated.
 *
 * @source definition of power; 14 or 28 V regulated, 12 or 24 V on the battery: common practice, no source
 */
export function currentA(load: Load, phase: Phase, system: Electrical['system']): number {
  const volts = (ON_BATTERY.has(phase) ? BATTERY_V : REGULATED_V)[system];
  return load.amps?.[phase] ?? (load.watts?.[phase] ?? 0) / volts;
}

/**
 * Returns the loads that are aboard after the visit.
 *
 * @source definition
 */
export function fitted({ loads }: Pick<Electrical, 'loads'>): Load[] {
  return loads.filter(({ change }) => change !== 'removed');
}

/**
 * Returns the current that charges the battery in a phase in amperes; none on the battery itself.
 *
 * @source definition
 */
export function chargingA({ battery }: Pick<Electrical, 'battery'>, phase: Phase): number {
  return phase === 'start' || phase === 'sourceFailed' ? 0 : (battery?.charging?.[phase] ?? 0);
}

/**
 * Sums the loads in a phase.
 *
 * @source common practice, no source
 */
export function sumOf(loads: readonly Load[], phase: Phase, system: Electrical['system']): Sum {
  const amps = (duty: Load['duty']): number =>
    loads.filter((load) => load.duty === duty).reduce((sum, load) => sum + currentA(load, phase, system), 0);
  const continuousA = amps('continuous');
  return { continuousA, peakA: continuousA + amps('intermittent') };
}

/**
 * Returns the current of one source in a phase: by its curve at the engine speed, never above rating or regulator. A
 * curve without a speed counts with its minimum.
 */
function outputA(source: Electrical['sources'][number], engineRpm: number | undefined): number {
  const curve = source.outputBySpeed ?? [];
  const most = Math.min(source.ratedA, source.regulatorA ?? Number.POSITIVE_INFINITY);
  if (curve.length === 0) return most;
  if (engineRpm === undefined) return Math.min(most, ...curve.map((point) => point.outputA));
  return Math.min(
    most,
    interpolate(
      curve,
      engineRpm,
      (point) => point.engineRpm,
      (point) => point.outputA,
    ),
  );
}

/**
 * Returns load before and after the visit against the current of the sources, phase by phase. The battery is a load while
 * it is charged.
 *
 * @source common practice, no source; curves are the manufacturer’s, linear between their points
 */
export function loadByPhase(electrical: Electrical): PhaseLoad[] {
  const { loads, sources, system, engineRpm } = electrical;
  const before = loads.filter(({ change }) => change !== 'added');
  const charged = (sum: Sum, phase: Phase): Sum => {
    const battery = chargingA(electrical, phase);
    return { continuousA: sum.continuousA + battery, peakA: sum.peakA + battery };
  };
  return PHASES.map((phase) => ({
    phase,
    ...charged(sumOf(fitted(electrical), phase, system), phase),
    before: charged(sumOf(before, phase, system), phase),
    capacityA: ON_BATTERY.has(phase)
      ? undefined
      : sources.reduce((sum, source) => sum + outputA(source, engineRpm?.[phase]), 0),
  }));
}
