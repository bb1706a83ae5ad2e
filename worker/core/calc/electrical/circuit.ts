import { PHASES } from '../../record/electrical.ts';
import type { Circuit, Electrical } from '../../record/visit.ts';
import { ampacityOf, isTooHot } from './ampacity.ts';
import type { Ampacity, CircuitResult, Drop, Sum } from './electrical-result.ts';
import { sumOf } from './load.ts';
import { greatestProtectionA } from './protection-table.ts';
import { conductorTemperatureC, DROP_LIMIT_V, dropV, feederLimitV, longestRunAtTemperature } from './voltage-drop.ts';
import { ohmPerM } from './wire-table.ts';

/** Currents of a circuit and the limits of its voltage drop. */
interface CircuitLimits {
  continuousA: number;
  peakA: number;
  /** Undefined if its source is not in the record. */
  dropCurrentA: number | undefined;
  dropLimitV: number;
  /** Limit of the drop at the peak; undefined if the circuit has no such limit. */
  peakDropLimitV: number | undefined;
  measuredLimitV: number;
}

/**
 * Returns load, ampacity, voltage drop and protection of a circuit.
 *
 * @source AC 43.13-1B 11-66, read; of main feeders FAA-H-8083-31 chapter 9, read
 */
export function circuitResult(circuit: Circuit, electrical: Electrical): CircuitResult {
  const limits = circuit.mainFeeder ? feederLimits(circuit, electrical) : ordinaryLimits(circuit, electrical);
  const { continuousA, peakA, dropCurrentA, dropLimitV, peakDropLimitV, measuredLimitV } = limits;
  const wire: Wire = { circuit, ampacity: ampacityOf(circuit, electrical.altitudeFt), ohm: ohmPerM(circuit) };
  const conductorC = conductorTemperatureOf(wire, continuousA);
  const continuousDrop =
    dropCurrentA === undefined
      ? undefined
      : dropOf(wire, {
          currentA: dropCurrentA,
          limitV: dropLimitV,
          conductorC: conductorTemperatureOf(wire, dropCurrentA),
        });
  return {
    id: circuit.id,
    continuousA,
    peakA,
    ampacity: wire.ampacity,
    conductorC,
    continuousDrop,
    peakDrop:
      peakDropLimitV === undefined ? undefined : dropOf(wire, { currentA: peakA, limitV: peakDropLimitV, conductorC }),
    measuredLimitV,
    longestRunM: continuousDrop && longestRunM(wire, continuousDrop),
    protectionLimit:
      (circuit.protection && greatestProtectionA(circuit, circuit.protection)) ??
      (wire.ampacity && { limitA: wire.ampacity.currentA, from: 'ampacity' }),
  };
}

/**
 * Returns the limits of a main feeder: for the rating of its source, or the five-minute rate of its battery, with one
 * limit for any load.
 */
function feederLimits(circuit: Circuit, electrical: Electrical): CircuitLimits {
  const load = loadOf(circuit, electrical);
  const ratedA = feederCurrentA(circuit, electrical);
  const isOfSource = circuit.mainFeeder?.kind === 'source';
  const continuousA = isOfSource ? Math.max(load.continuousA, ratedA ?? 0) : load.continuousA;
  const limitV = feederLimitV(electrical.system);
  return {
    continuousA,
    peakA: Math.max(load.peakA, continuousA, ratedA ?? 0),
    dropCurrentA: ratedA,
    dropLimitV: limitV,
    peakDropLimitV: undefined,
    measuredLimitV: limitV,
  };
}

/** Returns the limits of any other circuit: for its loads, with a separate limit for the intermittent ones. */
function ordinaryLimits(circuit: Circuit, electrical: Electrical): CircuitLimits {
  const { continuousA, peakA, hasPeak } = loadOf(circuit, electrical);
  const { continuous, intermittent } = DROP_LIMIT_V[electrical.system];
  return {
    continuousA,
    peakA: Math.max(peakA, continuousA),
    dropCurrentA: continuousA,
    dropLimitV: continuous,
    peakDropLimitV: hasPeak ? intermittent : undefined,
    measuredLimitV: hasPeak ? intermittent : continuous,
  };
}

/** A wire of a circuit; its resistance is undefined for a size that the table lacks. */
interface Wire {
  circuit: Circuit;
  ampacity: Ampacity | undefined;
  ohm: number | undefined;
}

function dropOf(
  { circuit, ohm }: Wire,
  { currentA, limitV, conductorC }: Omit<Drop, 'dropV'> & { conductorC: number },
): Drop | undefined {
  if (ohm === undefined) return undefined;
  const { runM, material } = circuit;
  return { currentA, dropV: dropV({ ohmPerM: ohm, runM, currentA, conductorC, material }), limitV };
}

/** Returns the longest run within the limit of a drop; undefined without current. */
function longestRunM(wire: Wire, { currentA, limitV }: Drop): number | undefined {
  if (wire.ohm === undefined || !(currentA > 1e-6)) return undefined;
  return longestRunAtTemperature(
    limitV / (wire.ohm * currentA),
    conductorTemperatureOf(wire, currentA),
    wire.circuit.material,
  );
}

/** Returns the loads that a circuit feeds, directly or through a bus. */
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

/** Returns the current for the check of a main feeder; undefined if its source is not in the record. */
function feederCurrentA({ mainFeeder }: Circuit, { sources }: Electrical): number | undefined {
  if (mainFeeder?.kind === 'battery') return mainFeeder.fiveMinuteA;
  return sources.find(({ id }) => id === mainFeeder?.source)?.ratedA;
}

/**
 * Returns the temperature of the conductor. A wire of unknown capacity is assumed to be as hot as its rating permits,
 * and no wire colder than its surroundings.
 */
function conductorTemperatureOf({ circuit, ampacity }: Wire, currentA: number): number {
  const { ambientC } = circuit;
  const ratedC = Number(circuit.temperatureRating);
  if (isTooHot(circuit)) return ambientC;
  return ampacity ? conductorTemperatureC({ ambientC, ratedC, currentA, ampacityA: ampacity.currentA }) : ratedC;
}
