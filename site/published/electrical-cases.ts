import { deratedA } from '../../worker/core/calc/electrical/ampacity.ts';
import { enduranceOn } from '../../worker/core/calc/electrical/endurance.ts';
import { LOW_VOLTAGE_V, needsWatching } from '../../worker/core/calc/electrical/monitoring.ts';
import { greatestProtectionA } from '../../worker/core/calc/electrical/protection-table.ts';
import {
  conductorTemperatureC,
  DROP_LIMIT_V,
  dropV,
  feederLimitV,
  GROUND_RETURN_LIMIT_MILLIOHM,
  longestRunAtTemperature,
} from '../../worker/core/calc/electrical/voltage-drop.ts';
import {
  copperGauge,
  MIN_ALUMINIUM,
  ohmPerM,
  type TemperatureRatingC,
  WIRE_TABLE,
} from '../../worker/core/calc/electrical/wire-table.ts';
import { isClearOfControl } from '../../worker/core/calc/wiring/control-clearance.ts';
import { circularMils, diameterMm, gaugeNumber, solidOhmPer1000Ft } from '../../worker/core/calc/wiring/wire-gauge.ts';
import type { Electrical } from '../../worker/core/record/visit.ts';
import { GAUGES, type Gauge, type Material } from '../../worker/core/record/wire-size.ts';

const METRES_PER_FOOT = 0.3048;

interface Run {
  gauge: Gauge;
  runFt: number;
  currentA: number;
}

type HotRun = Parameters<typeof conductorTemperatureC>[0] & { coldRunFt: number; material?: Material };

const coldDropV = ({ gauge, runFt, currentA }: Run): number =>
  dropV({ ohmPerM: ohmPerM({ gauge }) ?? Number.NaN, runM: runFt * METRES_PER_FOOT, currentA });

/** Topics of chapter 11 of AC 43.13-1B and of the wire gauge, in feet and ohms per thousand feet as their tables are. */
export const ELECTRICAL_TOPICS = {
  protection: ({ gauge }: { gauge: Gauge }) => ({
    breaker: greatestProtectionA({ gauge }, { kind: 'breaker', ratingA: 0 })?.limitA ?? Number.NaN,
    fuse: greatestProtectionA({ gauge }, { kind: 'fuse', ratingA: 0 })?.limitA ?? Number.NaN,
  }),

  endurance: (input: Parameters<typeof enduranceOn>[0]) => {
    const { usableAmpMinutes, stretches, minutes = Number.NaN } = enduranceOn(input);
    return { ampMinutes: usableAmpMinutes, shedMin: stretches[1]?.minutes ?? Number.NaN, totalMin: minutes };
  },

  'voltage-drop': (run: Run) => ({ dropV: coldDropV(run) }),

  'generator-share': ({ continuousA, capacityA }: { continuousA: number; capacityA: number }) => ({
    over: Number(needsWatching(continuousA, capacityA)),
  }),

  'low-voltage': ({ system }: Pick<Electrical, 'system'>) => ({ warningV: LOW_VOLTAGE_V[system] }),

  'main-feeder': ({ system }: Pick<Electrical, 'system'>) => ({
    limitV: feederLimitV(system),
    groundReturnOhm: GROUND_RETURN_LIMIT_MILLIOHM / 1000,
  }),

  /** The thinnest wire of the table that keeps within the limit of a continuous load. */
  'wire-for-run': ({ system, runFt, currentA }: { system: Electrical['system']; runFt: number; currentA: number }) => {
    const fits = (gauge: Gauge): boolean => coldDropV({ gauge, runFt, currentA }) <= DROP_LIMIT_V[system].continuous;
    const thinnest = GAUGES.find((gauge) => WIRE_TABLE[gauge] && fits(gauge));
    return { gauge: thinnest === undefined ? Number.NaN : gaugeNumber(thinnest) };
  },

  derating: ({ altitudeFt, ...rating }: Parameters<typeof deratedA>[0] & { altitudeFt: number }) => ({
    bundledA: deratedA(rating, altitudeFt) ?? Number.NaN,
    singleA: deratedA({ ...rating, bundleFactor: 1 }, altitudeFt) ?? Number.NaN,
  }),

  'hot-run': ({ coldRunFt, material, ...at }: HotRun) => {
    const conductorC = conductorTemperatureC(at);
    return { conductorC, runFt: longestRunAtTemperature(coldRunFt, conductorC, material) };
  },

  /** Aluminium by the copper wire that it stands for. */
  'aluminium-wire': ({ gauge }: { gauge: Gauge }) => {
    const copper = copperGauge({ gauge, material: 'aluminium' });
    return { copper: copper === undefined ? Number.NaN : gaugeNumber(copper), least: gaugeNumber(MIN_ALUMINIUM) };
  },

  'wire-table': ({ gauge, rating }: { gauge: Gauge; rating: TemperatureRatingC }) => ({
    ampacityA: WIRE_TABLE[gauge]?.ampacityA[rating] ?? Number.NaN,
    ohm: WIRE_TABLE[gauge]?.ohmPer1000Ft ?? Number.NaN,
  }),

  'control-clearance': ({ distanceIn }: { distanceIn: number }) => {
    const near = { what: 'Loom', control: 'Cable', distanceMm: distanceIn * 25.4, isSecured: true, isGuarded: false };
    return { clear: Number(isClearOfControl(near)) };
  },

  'wire-gauge': ({ gauge }: { gauge: number }) => ({
    diameterIn: diameterMm(gauge) / 25.4,
    circularMils: circularMils(gauge),
    ohm: solidOhmPer1000Ft(gauge),
  }),
};
