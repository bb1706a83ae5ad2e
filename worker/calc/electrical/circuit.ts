import { PHASES } from '../../visit/electrical.ts';
import type { Circuit, Electrical } from '../../visit/visit.ts';
import { type Ampacity, ampacityOf } from './ampacity.ts';
import { sumOf } from './load.ts';
import { greatestProtectionA } from './protection-table.ts';
import { conductorTemperatureC, DROP_LIMIT_V, dropV, hotRun } from './voltage-drop.ts';
import { ohmPerM } from './wire-table.ts';

/** A drop with the limit that it is held to. */
export interface Drop {
  currentA: number;
  dropV: number;
  limitV: number;
}

export interface CircuitResult {
  id: string;
  /** Greatest of any phase. */
  continuousA: number;
  peakA: number;
  /** Undefined where neither record nor table rates the wire. */
  ampacity: Ampacity | undefined;
  /** Estimated, at the continuous current. */
  conductorC: number;
  /** Undefined for a size that the table lacks. */
  continuousDrop: Drop | undefined;
  /** Undefined where the circuit has no intermittent load. */
  peakDrop: Drop | undefined;
  /** What a drop measured under load is held to. */
  measuredLimitV: number;
  /** Longest run at the continuous current and this temperature; undefined where nothing flows all the time. */
  longestRunM: number | undefined;
  /** Of a size that the chart lacks, what the wire can carry. */
  protectionLimit: { limitA: number; from: 'record' | 'table' | 'ampacity' } | undefined;
}

/** Everything that the wire and the protection of a circuit are held to. */
export function circuitResult(circuit: Circuit, electrical: Electrical): CircuitResult {
  const { system, altitudeFt, loads } = electrical;
  const own = loads.filter(
    ({ circuit: of, bus, change }) => change !== 'removed' && (of === circuit.id || bus === circuit.feedsBus),
  );
  const sums = PHASES.map((phase) => sumOf(own, phase, system));
  const continuousA = Math.max(...sums.map((sum) => sum.continuousA));
  const peakA = Math.max(...sums.map((sum) => sum.peakA));
  const ampacity = ampacityOf(circuit, altitudeFt);
  const ratedC = Number(circuit.temperatureRating);
  // A wire whose capacity is unknown is taken to be as hot as it may become.
  const conductorC = ampacity
    ? conductorTemperatureC({
        ambientC: circuit.ambientC,
        ratedC,
        currentA: continuousA,
        ampacityA: ampacity.currentA,
      })
    : ratedC;
  const limits = DROP_LIMIT_V[system];
  const ohm = ohmPerM(circuit);
  const drop = (currentA: number, limitV: number): Drop | undefined =>
    ohm === undefined
      ? undefined
      : { currentA, dropV: dropV(ohm, circuit.runM, currentA, conductorC, circuit.material), limitV };
  const hasPeak = own.some(({ duty }) => duty === 'intermittent');
  return {
    id: circuit.id,
    continuousA,
    peakA,
    ampacity,
    conductorC,
    continuousDrop: drop(continuousA, limits.continuous),
    peakDrop: hasPeak ? drop(peakA, limits.intermittent) : undefined,
    measuredLimitV: hasPeak ? limits.intermittent : limits.continuous,
    longestRunM:
      ohm === undefined || !(continuousA > 1e-6)
        ? undefined
        : hotRun(limits.continuous / (ohm * continuousA), conductorC, circuit.material),
    protectionLimit:
      (circuit.protection && greatestProtectionA(circuit, circuit.protection)) ??
      (ampacity && { limitA: ampacity.currentA, from: 'ampacity' }),
  };
}
