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
import { HangTest } from './suspension.ts';

export const Correction = part('correction', {
  reading: mass('correction_reading', 200),
  add: mass('correction_add', 0.1, { min: -1e5 }),
});

export const Scale = part('scale', {
  id: identifier(['scale'], 'scale_id', 'S1'),
  serial: line('scale_serial', '44-107', 60),
  capacity: mass('scale_capacity', 500),
  resolution: mass('scale_resolution', 0.1),
  errorLimit: mass('scale_errorLimit', 0.2),
  calibratedOn: pastDate('scale_calibratedOn', '2026-02-10', m.weighing_calibrationScale, {
    code: 'SCALE_CALIBRATION_EXPIRED',
  }).optional(),
  certificate: line('scale_certificate', 'CAL-2026-0311', 60).optional(),
  calibrationDueOn: date('scale_calibrationDueOn', '2027-02-10'),
  corrections: list('scale_corrections', Correction, {
    max: 40,
  }).optional(),
});

export const WeighingPoint = part('weighingPoint', {
  id: identifier(['weighing-point'], 'weighingPoint_id', 'left'),
  name: line('weighingPoint_name', 'Left main', 40),
  side: choice('weighingPoint_side', ['left', 'right', 'centre'] as const),
  scale: reference('scale', 'weighingPoint_scale', 'S1'),
  arm: arm('weighingPoint_arm', 2210),
  armLimit: distance('weighingPoint_armLimit', 2, { min: 0 }),
  lateralArm: distance('weighingPoint_lateralArm', -620).optional(),
  lateralArmLimit: distance('weighingPoint_lateralArmLimit', 2, { min: 0 }).optional(),
  tare: mass('weighingPoint_tare', 0.8).optional(),
  readings: list('weighingPoint_readings', mass('weighingPoint_readings_each', 131.6, { min: -1e5 }), {
    min: 1,
    max: 20,
  }),
});

/** Item weighed with the aircraft that does not belong to it, or item of the aircraft that was not aboard. */
export const LooseItem = part('looseItem', {
  name: line('looseItem_name', 'Torch left in the footwell', 80),
  mass: mass('looseItem_mass', 0.4),
  massLimit: mass('looseItem_massLimit', 0.02).optional(),
  arm: arm('looseItem_arm', 1900),
  lateralArm: distance('looseItem_lateralArm', -250).optional(),
  isOil: flag('looseItem_isOil', false).optional(),
});

export const FuelAboard = part('fuelAboard', {
  station: reference('fuel-station', 'fuelAboard_station', 'main-tank', {
    once: m.weighing_contentTank,
  }),
  volume: volume('fuelAboard_volume', 2),
  volumeLimit: volume('fuelAboard_volumeLimit', 0.5).optional(),
});

/** A distance measured at the weighing, from which arms follow. */
export const MeasuredDistance = part('measuredDistance', {
  name: line('measuredDistance_name', 'Datum plumb line to left main axle', 80),
  distance: distance('measuredDistance_distance', 2210),
  limit: distance('measuredDistance_limit', 2, { min: 0 }).optional(),
});

/** Reading of one point after the aircraft was off the scales. */
export const RepeatedReading = part('repeatedReading', {
  point: reference('weighing-point', 'repeatedReading_point', 'left', { once: m.weighing_readingAgain }),
  reading: mass('repeatedReading_reading', 121.5, { min: -1e5 }),
});

/** Second weighing, after the aircraft was off the scales and the scales were at zero. */
export const Repeated = part('repeated', {
  at: timestamp('repeated_at', '2026-11-05T13:20:00+01:00', m.weighing_repeated, { after: ['weighedAt'] }),
  by: person('repeated_by', 'mila', m.weighing_weighedAgain, { scope: 'weighing', on: ['at'] }),
  readings: list('repeated_readings', RepeatedReading, { min: 1, max: 12 }),
});

/** Causes that leave the weighing right and the earlier figures wrong. Any other cause is corrected in the record. */
const EXPLANATIONS = [
  'earlier-figure-wrong',
  'earlier-work-unrecorded',
  'painted-or-covered',
  'repaired',
  'dirt-or-moisture',
  'other-build',
] as const;

/** Cause of a difference between weighing and earlier figures. */
export const DifferenceExplained = part('differenceExplained', {
  cause: choice('differenceExplained_cause', EXPLANATIONS),
  words: line('differenceExplained_words', 'Schedule 3 of 2014 left out the parachute; its mass was weighed'),
  by: person('differenceExplained_by', 'jonas', m.weighing_explained, { scope: 'release', on: 'assessment' }),
});

export const Weighing = part('weighing', {
  weighedAt: timestamp('weighing_weighedAt', '2026-11-05T12:40:00+01:00', m.weighing_weighing),
  place: line('weighing_place', 'Hangar 2'),
  indoors: flag('weighing_indoors', true),
  by: person('weighing_by', 'mila', m.weighing_weighedAircraft, {
    scope: 'weighing',
    on: ['weighedAt'],
  }),
  checkedBy: person('weighing_checkedBy', 'jonas', m.weighing_checkedWeighing).optional(),
  scales: list('weighing_scales', Scale, { min: 1, max: 12 }),
  points: list('weighing_points', WeighingPoint, { min: 1, max: 12 }),
  level: part('weighing_level', {
    longitudinalDeg: number('weighing_level_longitudinalDeg', '°', 0.1, { min: -90, max: 90 }),
    lateralDeg: number('weighing_level_lateralDeg', '°', 0, { min: -90, max: 90 }),
    limitDeg: number('weighing_level_limitDeg', '°', 0.1, { min: 0, max: 10 }).optional(),
  }).optional(),
  fuelState: choice('weighing_fuelState', ['drained-to-unusable', 'dry', 'stated', 'full'] as const).optional(),
  fuelAboard: list('weighing_fuelAboard', FuelAboard, { max: 20 }).optional(),
  oilState: choice('weighing_oilState', ['full', 'drained', 'stated'] as const).optional(),
  oilArm: arm('weighing_oilArm', 420, { of: m.weighing_oil }).optional(),
  oilMassLimit: mass('weighing_oilMassLimit', 0.3).optional(),
  cgHeight: distance('weighing_cgHeight', 800).optional(),
  support: line('weighing_support', 'Wheels on platforms, ramps taken away').optional(),
  distances: list('weighing_distances', MeasuredDistance, { max: 20 }).optional(),
  hangTests: list('weighing_hangTests', HangTest, { max: 8 }).optional(),
  itemsAboard: list('weighing_itemsAboard', LooseItem, { max: 60 }).optional(),
  itemsMissing: list('weighing_itemsMissing', LooseItem, {
    max: 60,
  }).optional(),
  repeated: Repeated.optional(),
  differenceExplained: DifferenceExplained.optional(),
  note: line('weighing_note', 'Canopy closed, flaps up').optional(),
});
export type Weighing = z.infer<typeof Weighing>;
