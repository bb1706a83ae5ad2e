import type { FieldText } from '../text/field-texts.ts';
import * as m from '../text/generated/messages.ts';
import { which } from './altimetry.ts';
import { Reading } from './compass.ts';
import { choice, line, list, number, part, person, reference, timestamp } from './field.ts';

const TORQUE_UNITS = ['N·m', 'in·lbf', 'ft·lbf'] as const;

const torque = (text: FieldText, example: number) => number(text, 'torque.unit', example, { min: 0, max: 10_000 });

export const Torque = part(
  'torque',
  {
    for: reference(['task', 'finding', 'modification'], 'torque_for', 'T37', { called: m.measurements_workOfTorque }),
    fastener: line('torque_fastener', 'Propeller bolts 1 to 6', 80),
    value: torque('torque_value', 24),
    unit: choice('measured_unit', TORQUE_UNITS),
    from: torque('torque_from', 22),
    to: torque('torque_to', 26),
    wrench: line('torque_wrench', 'TW-04, calibrated until March 2027', 80),
    by: person('measured_by', 'tomas', m.measurements_measured),
    at: timestamp('measured_at', '2026-11-05T10:30:00+01:00', m.measurements_measurement),
  },
  'fastener',
);

export const Magnetometer = part('magnetometer', {
  ...which,
  at: timestamp('measured_at', '2026-11-05T11:30:00+01:00', m.measurements_measurement),
  by: person('measured_by', 'mila', m.measurements_measured),
  limitDeg: number('measured_limit', '°', 4, { min: 0, max: 90 }),
  readings: list('magnetometer_readings', Reading, { min: 1, max: 72 }),
});

export const BalanceReading = part('balanceReading', {
  what: choice('balanceReading_what', ['vibration', 'track-split'] as const),
  place: line('balanceReading_place', 'Lateral, cabin floor', 60).optional(),
  value: number('balanceReading_value', 'in/s, or mm of track split', 0.12, { min: 0, max: 1000 }),
  limit: number('measured_limit', 'in/s, or mm of track split', 0.2, { min: 0, max: 1000 }),
});

export const Balance = part(
  'balance',
  {
    of: choice('balance_of', ['propeller', 'rotor', 'tail-rotor'] as const),
    when: choice('balance_when', ['before', 'after'] as const),
    at: timestamp('measured_at', '2026-11-05T12:10:00+01:00', m.measurements_measurement),
    by: person('measured_by', 'mila', m.measurements_measured),
    rpm: number('balance_rpm', '1/min', 2300, { min: 1, max: 100_000 }),
    weights: line('balance_weights', '12 g at bolt 3, 4 g at bolt 5').optional(),
    readings: list('balanceReading', BalanceReading, { min: 1, max: 20 }),
  },
  'of',
);

export const Measurements = part('measurements', {
  torques: list('torque', Torque, { max: 200 }).optional(),
  magnetometers: list('magnetometer', Magnetometer, { max: 8 }).optional(),
  balances: list('balance', Balance, { max: 40 }).optional(),
});
