import * as z from 'zod';
import { type FieldText, fieldText } from '../text/field-texts.ts';
import { choice, count, flag, identifier, line, list, number, part, reference } from './field.ts';
import { Traction } from './traction.ts';
import { GAUGES, MATERIALS } from './wire-size.ts';

/** Phases of flight in which a load is on; `sourceFailed` is flight on the battery only. */
export const PHASES = ['start', 'taxi', 'takeOff', 'cruise', 'landing', 'sourceFailed'] as const;
export type Phase = (typeof PHASES)[number];

const byPhase = (text: FieldText, unit: string, example: number, max: number) => {
  const field = (phase: FieldText) => number(phase, unit, example, { min: 0, max }).optional();
  return part(text, {
    start: field('phase_start'),
    taxi: field('phase_taxi'),
    takeOff: field('phase_takeOff'),
    cruise: field('phase_cruise'),
    landing: field('phase_landing'),
    sourceFailed: field('phase_sourceFailed'),
  });
};

const amps = (text: FieldText, example: number, { min = 0, max = 2000 } = {}) =>
  number(text, 'A', example, { min, max });

export const OutputPoint = part('outputPoint', {
  engineRpm: number('outputPoint_engineRpm', '1/min', 1800, { min: 0, max: 20_000 }),
  outputA: amps('outputPoint_outputA', 18),
});

export const PowerSource = part('powerSource', {
  id: identifier(['source'], 'powerSource_id', 'alternator'),
  name: line('powerSource_name', 'Alternator, permanent magnet', 80),
  item: reference('equipment-item', 'powerSource_item', 'E01').optional(),
  ratedA: amps('powerSource_ratedA', 20),
  regulatorA: amps('powerSource_regulatorA', 22).optional(),
  outputBySpeed: list('powerSource_outputBySpeed', OutputPoint, { min: 1, max: 20 }).optional(),
  isMonitored: flag('powerSource_isMonitored', false).optional(),
  monitoredBy: line('powerSource_monitoredBy', 'Ammeter in the lead of the alternator, red line at 20 A').optional(),
});

export const LowVoltageWarning = part('lowVoltageWarning', {
  isFitted: flag('lowVoltageWarning_isFitted', true),
  setPointV: number('lowVoltageWarning_setPointV', 'V', 13, { min: 0, max: 100 }).optional(),
});

/** Phases in which a source can charge the battery. */
const Charging = part('batteryCharging', {
  taxi: amps('phase_taxi', 6).optional(),
  takeOff: amps('phase_takeOff', 4).optional(),
  cruise: amps('phase_cruise', 1).optional(),
  landing: amps('phase_landing', 1).optional(),
});

export const Battery = part('battery', {
  item: reference('equipment-item', 'battery_item', 'E03').optional(),
  capacityAh: number('battery_capacityAh', 'Ah', 18, { min: 0, max: 1000 }),
  usableFactor: number('battery_usableFactor', '1', 0.75, {
    min: 0,
    max: 1,
  }),
  allowance: line('battery_allowance', 'Aged to 85 %, at 0 °C, discharged in two hours').optional(),
  charging: Charging.optional(),
  recogniseMin: number('battery_recogniseMin', 'min', 5, {
    min: 0,
    max: 120,
  }),
  landingMin: number('battery_landingMin', 'min', 10, { min: 0, max: 120 }),
  reserveMin: number('battery_reserveMin', 'min', 30, {
    min: 0,
    max: 600,
  }).optional(),
});

export const Bus = part('bus', {
  id: identifier(['bus'], 'bus_id', 'avionics'),
  name: line('bus_name', 'Avionics bus', 80),
  isAliveOnBattery: flag('bus_isAliveOnBattery', true),
});

export const Load = part('load', {
  id: identifier(['load'], 'load_id', 'L-RADIO'),
  name: line('load_name', 'VHF radio', 80),
  item: reference('equipment-item', 'load_item', 'E31').optional(),
  change: choice('load_change', ['kept', 'added', 'removed'] as const),
  duty: choice('load_duty', ['continuous', 'intermittent'] as const),
  isEssential: flag('load_isEssential', true),
  bus: reference('bus', 'load_bus', 'avionics'),
  circuit: reference('circuit', 'load_circuit', 'C-RADIO').optional(),
  amps: byPhase('load_amps', 'A', 0.6, 1000).optional(),
  watts: byPhase('load_watts', 'W', 8, 30_000).optional(),
  measuredA: amps('load_measuredA', 0.55).optional(),
});

export const Protection = part('protection', {
  kind: choice('protection_kind', ['breaker', 'fuse'] as const),
  ratingA: amps('protection_ratingA', 5),
  limitA: amps('protection_limitA', 5).optional(),
});

export const StatedRating = part('statedRating', {
  freeAirA: amps('statedRating_freeAirA', 14, { min: 0.01 }),
  bundleFactor: number('statedRating_bundleFactor', '1', 0.7, { min: 0.01, max: 1 }),
  altitudeFactor: number('statedRating_altitudeFactor', '1', 0.95, {
    min: 0.01,
    max: 1,
  }).optional(),
  from: line('statedRating_from', 'AC 43.13-1B figures 11-4a, 11-5, 11-6'),
});

const FromSource = part('fromSource', {
  kind: choice('fromSource_kind', ['source'] as const),
  source: reference('source', 'fromSource_source', 'alternator'),
});

const FromBattery = part('fromBattery', {
  kind: choice('fromBattery_kind', ['battery'] as const),
  fiveMinuteA: amps('fromBattery_fiveMinuteA', 60, { min: 0.01 }),
});

export const MainFeeder = z.discriminatedUnion('kind', [FromSource, FromBattery]).meta({
  ...fieldText('mainFeeder'),
});

export const Circuit = part('circuit', {
  id: identifier(['circuit'], 'circuit_id', 'C-RADIO'),
  name: line('circuit_name', 'RADIO', 60),
  feedsBus: reference('bus', 'circuit_feedsBus', 'avionics').optional(),
  mainFeeder: MainFeeder.optional(),
  protection: Protection.optional(),
  unprotectedBecause: line('circuit_unprotectedBecause', 'Main circuit of the starter').optional(),
  gauge: choice('circuit_gauge', GAUGES),
  material: choice('circuit_material', MATERIALS).optional(),
  temperatureRating: choice('circuit_temperatureRating', ['105', '150', '200'] as const),
  runM: number('circuit_runM', 'm', 2.4, {
    min: 0,
    max: 200,
  }),
  ambientC: number('circuit_ambientC', '°C', 50, { min: -60, max: 250 }),
  bundleWires: count('circuit_bundleWires', 12, { min: 1, max: 500 }),
  bundleLoadPercent: number('circuit_bundleLoadPercent', '%', 15, {
    min: 0,
    max: 100,
  }),
  rating: StatedRating.optional(),
  measuredDropV: number('circuit_measuredDropV', 'V', 0.1, { min: 0, max: 100 }).optional(),
  groundReturnMilliohm: number('circuit_groundReturnMilliohm', 'mΩ', 1.8, { min: 0, max: 1_000_000 }).optional(),
});

export const Electrical = part('electrical', {
  system: choice('electrical_system', ['14-volt', '28-volt'] as const),
  altitudeFt: number('electrical_altitudeFt', 'ft', 10_000, {
    min: 0,
    max: 60_000,
  }),
  engineRpm: byPhase('electrical_engineRpm', '1/min', 4800, 20_000).optional(),
  sources: list('electrical_sources', PowerSource, { min: 1, max: 6 }),
  lowVoltageWarning: LowVoltageWarning.optional(),
  battery: Battery.optional(),
  buses: list('electrical_buses', Bus, { min: 1, max: 12 }),
  loads: list('electrical_loads', Load, { min: 1, max: 150 }),
  circuits: list('electrical_circuits', Circuit, { max: 150 }),
  traction: Traction.optional(),
});
export type Electrical = z.infer<typeof Electrical>;
