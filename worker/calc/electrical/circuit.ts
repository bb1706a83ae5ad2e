import { PHASES } from '../../visit/electrical.ts';
import type { Circuit, Electrical } from '../../visit/visit.ts';
import { ampacityOf, isTooHot } from './ampacity.ts';
import type { Ampacity, CircuitResult, Drop, Sum } from './electrical-result.ts';
import { sumOf } from './load.ts';
import { greatestProtectionA } from './protection-table.ts';
import { conductorTemperatureC, DROP_LIMIT_V, dropV, feederLimitV, hotRun } from './voltage-drop.ts';
import { ohmPerM } from './wire-table.ts';

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
