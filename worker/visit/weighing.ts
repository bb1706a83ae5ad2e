import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import {
  arm,
  choice,
  date,
  distance,
  flag,
  identifier,
  line,
  list,
  mass,
  number,
  part,
  pastDate,
  person,
  reference,
  timestamp,
  volume,
} from './field.ts';

export const Correction = part('Scale correction', 'What the calibration certificate adds at one reading', {
  reading: mass('Reading', 'Scale reading', 200),
  add: mass('Add', 'Mass to add to the reading, negative to take off', 0.1, { min: -1e5 }),
});

export const Scale = part('Scale', 'A scale or load cell', {
  id: identifier(['scale'], 'Identifier', 'How the record names this scale', 'S1'),
  serial: line('Serial number', 'Serial number', '44-107', 60),
  capacity: mass('Capacity', 'Greatest load', 500),
  resolution: mass('Resolution', 'Smallest step shown', 0.1),
  errorLimit: mass('Error limit', 'Limit of error from its certificate, plus or minus', 0.2),
  calibratedOn: pastDate(
    'Calibrated on',
    'Date of the certificate',
    '2026-02-10',
    m.weighing_calibrationScale,
    'SCALE_CALIBRATION_EXPIRED',
  ).optional(),
  calibrationDueOn: date('Calibration due', 'Last day on which the calibration holds', '2027-02-10'),
  corrections: list('Corrections', 'Corrections from the certificate, in any order; linear between them', Correction, {
    max: 40,
  }).optional(),
});

export const WeighingPoint = part('Weighing point', 'A wheel or jacking point on a scale', {
  id: identifier(['weighing-point'], 'Identifier', 'How the record names this point', 'left'),
  name: line('Name', 'Name as printed', 'Left main', 40),
  side: choice('Side', 'Which side of the centre line', ['left', 'right', 'centre'] as const),
  scale: reference('scale', 'Scale', 'Scale under this point', 'S1'),
  arm: arm('Arm', 'Measured arm of the point', 2210),
  armLimit: distance('Arm limit', 'Limit of error of that arm, plus or minus', 2, { min: 0 }),
  tare: mass('Tare', 'Chocks, blocks and jigs on the scale', 0.8).optional(),
  readings: list(
    'Readings',
    'Gross reading of each run, with the aircraft lifted off between',
    mass('Reading', 'Gross reading; negative where the tail is held down', 131.6, { min: -1e5 }),
    {
      min: 1,
      max: 20,
    },
  ),
});

/** Something weighed with the aircraft that is no part of it, or a part of it that was not aboard. */
export const LooseItem = part('Item', 'A mass that the scales felt wrongly', {
  name: line('Name', 'What it is', 'Torch left in the footwell', 80),
  mass: mass('Mass', 'Its mass', 0.4),
  massLimit: mass('Mass limit', 'Limit of error of that mass, plus or minus', 0.02).optional(),
  arm: arm('Arm', 'Its arm', 1900),
});

export const FuelAboard = part('Fuel aboard', 'Fuel in one tank when weighed', {
  station: reference('fuel-station', 'Station', 'Fuel station of the aircraft', 'main-tank', {
    once: m.weighing_contentTank,
  }),
  volume: volume('Volume', 'Total content when weighed, unusable fuel included', 2),
  volumeLimit: volume('Volume limit', 'Limit of error of that volume, plus or minus', 0.5).optional(),
});

export const Weighing = part('Weighing', 'The weighing', {
  weighedAt: timestamp('Weighed', 'When the last run ended', '2026-11-05T12:40:00+01:00', m.weighing_weighing),
  place: line('Place', 'Where', 'Hangar 2'),
  indoors: flag('Indoors', 'In a closed hangar, out of the wind', true),
  by: person('By', 'Person who weighed', 'mila', m.weighing_weighedAircraft, {
    scope: 'weighing',
    on: ['weighedAt'],
  }),
  checkedBy: person('Checked by', 'Person who checked', 'jonas', m.weighing_checkedWeighing).optional(),
  scales: list('Scales', 'Scales used', Scale, { min: 1, max: 12 }),
  points: list('Points', 'Weighing points', WeighingPoint, { min: 1, max: 12 }),
  level: part('Level', 'Attitude as measured', {
    longitudinalDeg: number('Longitudinal', 'Nose-up angle from level', '°', 0.1, { min: -90, max: 90 }),
    lateralDeg: number('Lateral', 'Right-down angle from level', '°', 0, { min: -90, max: 90 }),
  }).optional(),
  fuelState: choice('Fuel state', 'Fuel aboard when weighed', [
    'drained-to-unusable',
    'dry',
    'stated',
    'full',
  ] as const).optional(),
  fuelAboard: list('Fuel aboard', 'Fuel in each tank, where the state is “stated”', FuelAboard, { max: 20 }).optional(),
  oilState: choice('Oil state', 'Engine oil aboard when weighed', ['full', 'drained', 'stated'] as const).optional(),
  itemsAboard: list('Items aboard', 'Aboard, but no part of the empty mass', LooseItem, { max: 60 }).optional(),
  itemsMissing: list('Items missing', 'Part of the empty mass, but not aboard; oil to be added goes here', LooseItem, {
    max: 60,
  }).optional(),
  note: line('Note', 'What a reader must know', 'Canopy closed, flaps up').optional(),
});
export type Weighing = z.infer<typeof Weighing>;
