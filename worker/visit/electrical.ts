import * as z from 'zod';
import { choice, count, flag, identifier, line, list, number, part, reference } from './field.ts';
import { GAUGES, MATERIALS } from './wire-size.ts';

/** What the aircraft is doing while a load is on; `sourceFailed` is flight on the battery alone. */
export const PHASES = ['start', 'taxi', 'takeOff', 'cruise', 'landing', 'sourceFailed'] as const;
export type Phase = (typeof PHASES)[number];

const byPhase = (title: string, description: string, unit: string, example: number, max: number) => {
  const field = (phase: string) =>
    number(phase, `${description}: ${phase.toLowerCase()}`, unit, example, { min: 0, max }).optional();
  return part(title, `${description}; a phase left out is nought`, {
    start: field('Start'),
    taxi: field('Taxi'),
    takeOff: field('Take-off'),
    cruise: field('Cruise'),
    landing: field('Landing'),
    sourceFailed: field('Source failed'),
  });
};

const amps = (title: string, description: string, example: number, { min = 0, max = 2000 } = {}) =>
  number(title, description, 'A', example, { min, max });

export const OutputPoint = part('Output', 'What a source gives at one engine speed', {
  engineRpm: number('Engine speed', 'Speed of the engine', '1/min', 1800, { min: 0, max: 20_000 }),
  outputA: amps('Output', 'Current it can give', 18),
});

export const PowerSource = part('Source', 'An alternator or generator with its regulator', {
  id: identifier(['source'], 'Identifier', 'How the record names it', 'alternator'),
  name: line('Name', 'What it is', 'Alternator, permanent magnet', 80),
  item: reference('equipment-item', 'Item', 'Line of the equipment list', 'E01').optional(),
  ratedA: amps('Rating', 'Current it can give without end', 20),
  regulatorA: amps('Regulator', 'Current that its regulator can pass without end', 22).optional(),
  outputBySpeed: list('Output by speed', 'By rising engine speed', OutputPoint, { min: 1, max: 20 }).optional(),
  isMonitored: flag(
    'Monitored',
    'The crew have a placard or an instrument by which they keep the load below its rating',
    false,
  ).optional(),
  monitoredBy: line(
    'Monitored by',
    'Which placard or instrument that is',
    'Ammeter in the lead of the alternator, red line at 20 A',
  ).optional(),
});

export const LowVoltageWarning = part('Low-voltage warning', 'A light or a message when the voltage of the bus falls', {
  isFitted: flag('Fitted', 'There is one', true),
  setPointV: number('Set point', 'Voltage below which it comes on', 'V', 13, { min: 0, max: 100 }).optional(),
});

export const Battery = part('Battery', 'The battery that carries the loads when the source has failed', {
  item: reference('equipment-item', 'Item', 'Line of the equipment list', 'E03').optional(),
  capacityAh: number('Capacity', 'Rated capacity', 'Ah', 18, { min: 0, max: 1000 }),
  usableFactor: number('Usable factor', 'Share of it to count on at its age and charge, to the cut-off', '1', 0.75, {
    min: 0,
    max: 1,
  }),
  recogniseMin: number('Recognition', 'Minutes at the cruise load before loads are shed', 'min', 5, {
    min: 0,
    max: 120,
  }),
  landingMin: number('Landing', 'Minutes of approach and landing to keep in hand', 'min', 10, { min: 0, max: 120 }),
  reserveMin: number('Reserve', 'Minutes it has to last; 30 where nothing is stated', 'min', 30, {
    min: 0,
    max: 600,
  }).optional(),
});

export const Bus = part('Bus', 'What loads hang on together', {
  id: identifier(['bus'], 'Identifier', 'How the record names it', 'avionics'),
  name: line('Name', 'What it is called aboard', 'Avionics bus', 80),
  isAliveOnBattery: flag('Alive on battery', 'Stays alive when the source has failed and loads are shed', true),
});

export const Load = part('Load', 'Something that draws current', {
  id: identifier(['load'], 'Identifier', 'How the record names it', 'L-RADIO'),
  name: line('Name', 'What it is', 'VHF radio', 80),
  item: reference('equipment-item', 'Item', 'Line of the equipment list', 'E31').optional(),
  change: choice('Change', 'What the visit did to it', ['kept', 'added', 'removed'] as const),
  duty: choice('Duty', 'Continuous, or for moments only, such as a transmission', [
    'continuous',
    'intermittent',
  ] as const),
  isEssential: flag('Essential', 'Needed to fly on and land after the source has failed', true),
  bus: reference('bus', 'Bus', 'Bus that it hangs on', 'avionics'),
  circuit: reference('circuit', 'Circuit', 'Circuit that feeds it', 'C-RADIO').optional(),
  amps: byPhase('Current', 'Current in each phase', 'A', 0.6, 1000).optional(),
  watts: byPhase('Power', 'Power in each phase, where the current is not given', 'W', 8, 30_000).optional(),
  measuredA: amps('Measured', 'Current as measured', 0.55).optional(),
});

export const Protection = part('Protection', 'What opens the circuit', {
  kind: choice('Kind', 'Breaker or fuse', ['breaker', 'fuse'] as const),
  ratingA: amps('Rating', 'Current that it is rated for', 5),
  limitA: amps('Limit', 'Greatest rating for this wire by its maker, in place of the table', 5).optional(),
});

export const StatedRating = part('Rating', 'Current-carrying capacity read from charts, in place of the table', {
  freeAirA: amps('In free air', 'Capacity of a single wire for this temperature difference', 14, { min: 0.01 }),
  bundleFactor: number('Bundle factor', 'Factor for the bundle', '1', 0.7, { min: 0.01, max: 1 }),
  altitudeFactor: number('Altitude factor', 'Factor for the altitude; computed up to 20,000 ft', '1', 0.95, {
    min: 0.01,
    max: 1,
  }).optional(),
  from: line('From', 'Chart or maker’s figure that it was read from', 'AC 43.13-1B figures 11-4a, 11-5, 11-6'),
});

const FromSource = part('From a source', 'It carries a source at its rating', {
  kind: choice('Kind', 'What it carries', ['source'] as const),
  source: reference('source', 'Source', 'Which source', 'alternator'),
});

const FromBattery = part('From the battery', 'It carries the battery', {
  kind: choice('Kind', 'What it carries', ['battery'] as const),
  fiveMinuteA: amps('Five-minute rate', 'Current that empties the battery in five minutes', 60, { min: 0.01 }),
});

export const MainFeeder = z.discriminatedUnion('kind', [FromSource, FromBattery]).meta({
  title: 'Main feeder',
  description: 'Stated where the circuit leads from a source or the battery to the bus',
});

export const Circuit = part('Circuit', 'A protected feeder with its wire', {
  id: identifier(['circuit'], 'Identifier', 'How the record names it', 'C-RADIO'),
  name: line('Name', 'As on the breaker', 'RADIO', 60),
  feedsBus: reference('bus', 'Feeds bus', 'Bus whose loads all come through it', 'avionics').optional(),
  mainFeeder: MainFeeder.optional(),
  protection: Protection.optional(),
  unprotectedBecause: line(
    'Unprotected because',
    'Why it needs no protection',
    'Main circuit of the starter',
  ).optional(),
  gauge: choice('Gauge', 'Thinnest wire of the run', GAUGES),
  material: choice('Material', 'Metal of the wire; copper where nothing is stated', MATERIALS).optional(),
  temperatureRating: choice('Temperature rating', 'Conductor temperature the wire is made for, in °C', [
    '105',
    '150',
    '200',
  ] as const),
  runM: number('Run', 'Length out and back, with the ground return where that is a wire', 'm', 2.4, {
    min: 0,
    max: 200,
  }),
  ambientC: number('Ambient', 'Hottest surroundings', '°C', 50, { min: -60, max: 250 }),
  bundleWires: count('Wires in bundle', 'Wires that run together, itself included', 12, { min: 1, max: 500 }),
  bundleLoadPercent: number('Bundle loading', 'Current in the bundle as a share of what it could carry', '%', 15, {
    min: 0,
    max: 100,
  }),
  rating: StatedRating.optional(),
  measuredDropV: number('Measured drop', 'Voltage drop as measured', 'V', 0.1, { min: 0, max: 100 }).optional(),
  groundReturnMilliohm: number(
    'Ground return',
    'Resistance as measured from the ground point of source or battery to the ground terminal of the equipment',
    'mΩ',
    1.8,
    { min: 0, max: 1_000_000 },
  ).optional(),
});

export const Electrical = part('Electrical', 'Sources, battery, buses, loads and circuits', {
  system: choice('System', 'Nominal voltage', ['14-volt', '28-volt'] as const),
  altitudeFt: number('Altitude', 'Greatest altitude that the aircraft is flown at', 'ft', 10_000, {
    min: 0,
    max: 60_000,
  }),
  engineRpm: byPhase('Engine speed', 'Engine speed in each phase', '1/min', 4800, 20_000).optional(),
  sources: list('Sources', 'All that charge the battery', PowerSource, { min: 1, max: 6 }),
  lowVoltageWarning: LowVoltageWarning.optional(),
  battery: Battery.optional(),
  buses: list('Buses', 'Every bus', Bus, { min: 1, max: 12 }),
  loads: list('Loads', 'Every load, also those taken out', Load, { min: 1, max: 150 }),
  circuits: list('Circuits', 'Every circuit that the visit touched', Circuit, { max: 150 }),
});
export type Electrical = z.infer<typeof Electrical>;
