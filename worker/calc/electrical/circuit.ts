import { PHASES } from '../../visit/electrical.ts';
import type { Circuit, Electrical } from '../../visit/visit.ts';
import { type Ampacity, ampacityOf, isTooHot } from './ampacity.ts';
import { type Sum, sumOf } from './load.ts';
import { greatestProtectionA } from './protection-table.ts';
import { conductorTemperatureC, DROP_LIMIT_V, dropV, feederLimitV, hotRun } from './voltage-drop.ts';
import { ohmPerM } from './wire-table.ts';

/** A drop with the limit that it is held to. */
export interface Drop {
  currentA: number;
  dropV: number;
  limitV: number;
}

export interface CircuitResult {
  id: string;
  /** Greatest of any phase; of a source's main feeder at least its rated current. */
  continuousA: number;
  /** Of a main feeder at least its rated current, or the five-minute rate of the battery. */
  peakA: number;
  /** Undefined where neither record nor table rates the wire. */
  ampacity: Ampacity | undefined;
  /** Estimated, at the continuous current. */
  conductorC: number;
  /** Of a main feeder at its rated current; undefined for a size that the table lacks. */
  continuousDrop: Drop | undefined;
  /** Undefined where the circuit has no intermittent load, and for a main feeder, whose limit holds for any. */
  peakDrop: Drop | undefined;
  /** What a drop measured under load is held to. */
  measuredLimitV: number;
  /** Longest run at the current of the continuous drop; undefined where nothing flows all the time. */
  longestRunM: number | undefined;
  /** Of a size that the chart lacks, what the wire can carry. */
  protectionLimit: { limitA: number; from: 'record' | 'table' | 'ampacity' } | undefined;
}

/**
 * Everything that the wire and the protection of a circuit are held to.
 *
 * @source AC 43.13-1B 11-66, read; of main feeders FAA-H-8083-31 chapter 9, read
 */
export function circuitResult(circuit: Circuit, electrical: Electrical): CircuitResult {
  const { system, altitudeFt } = electrical;
  const { peakA, hasPeak, ...load } = loadOf(circuit, electrical);
  const feederA = feederCurrentA(circuit, electrical);
  const continuousA =
    circuit.mainFeeder?.kind === 'source' ? Math.max(load.continuousA, feederA ?? 0) : load.continuousA;
  const ampacity = ampacityOf(circuit, altitudeFt);
  const heatAt = (currentA: number): number => heatOf(circuit, ampacity, currentA);
  const ohm = ohmPerM(circuit);
  const drop = (currentA: number | undefined, limitV: number, conductorC: number): Drop | undefined =>
    ohm === undefined || currentA === undefined
      ? undefined
      : { currentA, dropV: dropV(ohm, circuit.runM, currentA, conductorC, circuit.material), limitV };
  const limits = DROP_LIMIT_V[system];
  const isPeakLimited = hasPeak && !circuit.mainFeeder;
  const continuousDrop = circuit.mainFeeder
    ? drop(feederA, feederLimitV(system), heatAt(feederA ?? 0))
    : drop(continuousA, limits.continuous, heatAt(continuousA));
  return {
    id: circuit.id,
    continuousA,
    peakA: Math.max(peakA, continuousA, feederA ?? 0),
    ampacity,
    conductorC: heatAt(continuousA),
    continuousDrop,
    peakDrop: isPeakLimited ? drop(peakA, limits.intermittent, heatAt(continuousA)) : undefined,
    measuredLimitV: circuit.mainFeeder ? feederLimitV(system) : hasPeak ? limits.intermittent : limits.continuous,
    longestRunM:
      ohm === undefined || !continuousDrop || !(continuousDrop.currentA > 1e-6)
        ? undefined
        : hotRun(
            continuousDrop.limitV / (ohm * continuousDrop.currentA),
            heatAt(continuousDrop.currentA),
            circuit.material,
          ),
    protectionLimit:
      (circuit.protection && greatestProtectionA(circuit, circuit.protection)) ??
      (ampacity && { limitA: ampacity.currentA, from: 'ampacity' }),
  };
}

/** What a circuit feeds, by itself or through a bus. */
function loadOf(circuit: Circuit, { loads, system }: Electrical): Sum & { hasPeak: boolean } {
  const own = loads.filter(
    ({ circuit: of, bus, change }) => change !== 'removed' && (of === circuit.id || bus === circuit.feedsBus),
  );
  const sums = PHASES.map((phase) => sumOf(own, phase, system));
  return {
    continuousA: Math.max(...sums.map((sum) => sum.continuousA)),
    peakA: Math.max(...sums.map((sum) => sum.peakA)),
    hasPeak: own.some(({ duty }) => duty === 'intermittent'),
  };
}

/** Current that a main feeder is held to; undefined where its source is not in the record. */
function feederCurrentA({ mainFeeder }: Circuit, { sources }: Electrical): number | undefined {
  if (mainFeeder?.kind === 'battery') return mainFeeder.fiveMinuteA;
  return sources.find(({ id }) => id === mainFeeder?.source)?.ratedA;
}

/**
 * Temperature of the conductor. A wire whose capacity is unknown is taken to be as hot as it may become, and none is colder than
 * what is round it.
 */
function heatOf(circuit: Circuit, ampacity: Ampacity | undefined, currentA: number): number {
  const { ambientC } = circuit;
  const ratedC = Number(circuit.temperatureRating);
  if (isTooHot(circuit)) return ambientC;
  return ampacity ? conductorTemperatureC({ ambientC, ratedC, currentA, ampacityA: ampacity.currentA }) : ratedC;
}
