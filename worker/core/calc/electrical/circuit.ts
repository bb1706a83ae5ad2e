import { PHASES } from '../../record/electrical.ts';
import type { Circuit, Electrical } from '../../record/visit.ts';
import { ampacityOf, isTooHot } from './ampacity.ts';
import type { Ampacity, CircuitResult, Drop, LoadedDrop, Sum } from './electrical-result.ts';
import { chargingA, fitted, sumOf } from './load.ts';
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
  /** Undefined if the circuit does not carry the start. */
  startA: number | undefined;
  measuredLimitV: number;
}

/**
 * Returns load, ampacity, voltage drop and protection of a circuit.
 *
 * @source AC 43.13-1B 11-66, read; of main feeders FAA-H-8083-31 chapter 9, read
 */
export function circuitResult(circuit: Circuit, electrical: Electrical): CircuitResult {
  const limits = circuit.mainFeeder ? feederLimits(circuit, electrical) : ordinaryLimits(circuit, electrical);
  const { continuousA, peakA, startA, measuredLimitV } = limits;
  const wire: Wire = { circuit, ampacity: ampacityOf(circuit, electrical.altitudeFt), ohm: ohmPerM(circuit) };
  const continuousDrop = dropOf(wire, limits.dropCurrentA, limits.dropLimitV);
  const peakDrop = dropOf(wire, peakA, limits.peakDropLimitV);
  const longest = [continuousDrop, peakDrop].flatMap((drop) => (drop ? longestRunM(wire, drop) : []));
  return {
    id: circuit.id,
    continuousA,
    peakA,
    ampacity: wire.ampacity,
    conductorC: conductorTemperatureOf(wire, continuousA),
    continuousDrop,
    peakDrop,
    startDrop: loadedDrop(wire, startA),
    measuredLimitV,
    longestRunM: longest.length === 0 ? undefined : Math.min(...longest),
    protectionLimit:
      (circuit.protection && greatestProtectionA(circuit, circuit.protection)) ??
      (wire.ampacity && { limitA: wire.ampacity.currentA, from: 'ampacity' }),
  };
}

/**
 * Returns the limits of a main feeder: for the rating of its source, or the five-minute rate of its battery, with one
 * limit for any load. That of a battery carries its charge and the start as well.
 */
function feederLimits(circuit: Circuit, electrical: Electrical): CircuitLimits {
  const load = loadOf(circuit, electrical);
  const ratedA = feederCurrentA(circuit, electrical);
  const isOfSource = circuit.mainFeeder?.kind === 'source';
  const startA = isOfSource ? undefined : sumOf(fitted(electrical), 'start', electrical.system).peakA;
  const continuousA = Math.max(
    load.continuousA,
    isOfSource ? (ratedA ?? 0) : Math.max(...PHASES.map((phase) => chargingA(electrical, phase))),
  );
  const limitV = feederLimitV(electrical.system);
  return {
    continuousA,
    peakA: Math.max(load.peakA, continuousA, ratedA ?? 0, startA ?? 0),
    dropCurrentA: ratedA,
    dropLimitV: limitV,
    peakDropLimitV: undefined,
    startA,
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
    startA: undefined,
    measuredLimitV: hasPeak ? intermittent : continuous,
  };
}

/** A wire of a circuit; its resistance is undefined for a size that the table lacks. */
interface Wire {
  circuit: Circuit;
  ampacity: Ampacity | undefined;
  ohm: number | undefined;
}

/** Currents below this are binary rounding: our choice. */
const NO_CURRENT_A = 1e-6;

/** Returns the drop at a current, with the conductor as hot as that current makes it; undefined without current. */
function loadedDrop(wire: Wire, currentA: number | undefined): LoadedDrop | undefined {
  const { circuit, ohm } = wire;
  if (ohm === undefined || currentA === undefined || !(currentA > NO_CURRENT_A)) return undefined;
  const conductorC = conductorTemperatureOf(wire, currentA);
  const { runM, material } = circuit;
  return { currentA, dropV: dropV({ ohmPerM: ohm, runM, currentA, conductorC, material }), conductorC };
}

function dropOf(wire: Wire, currentA: number | undefined, limitV: number | undefined): Drop | undefined {
  const drop = limitV === undefined ? undefined : loadedDrop(wire, currentA);
  return drop && limitV !== undefined ? { ...drop, limitV } : undefined;
}

/** Returns the longest run within the limit of a drop. */
function longestRunM({ circuit, ohm = Number.NaN }: Wire, { currentA, limitV, conductorC }: Drop): number {
  return longestRunAtTemperature(limitV / (ohm * currentA), conductorC, circuit.material);
}

/** Returns the loads that a circuit feeds, directly or through a bus. */
function loadOf(circuit: Circuit, { loads, system }: Electrical): Sum & { hasPeak: boolean } {
  const own = fitted({ loads }).filter(({ circuit: of, bus }) => of === circuit.id || bus === circuit.feedsBus);
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
