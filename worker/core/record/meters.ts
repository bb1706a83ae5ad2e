import type * as z from 'zod';
import { COUNTS } from './counts.ts';
import { choice, count, identifier, line, list, number, part } from './field.ts';
import { PRODUCTS } from './product.ts';

export const Meter = part('meter', {
  id: identifier(['meter'], 'meter_id', 'airframe-hours'),
  of: choice('meter_of', ['airframe', 'engine', 'propeller', 'rotor', 'gearbox', 'wing', 'canopy', 'battery'] as const),
  basis: choice('meter_basis', ['flight', 'tacho', 'hour-meter'] as const),
  inHours: number('meter_inHours', 'h', 1204.6, { min: 0, max: 200_000 }),
  outHours: number('meter_outHours', 'h', 1204.9, { min: 0, max: 200_000 }),
  offsetHours: number('meter_offsetHours', 'h', 0).optional(),
});

const MOST = { max: 10_000_000 };

/** A counter of one product. One that was replaced keeps its identifier; `offset` is what the earlier one had counted. */
export const Counter = part('counter', {
  id: identifier(['counter'], 'counter_id', 'winch-launches'),
  counts: choice('counter_counts', COUNTS),
  of: choice('counter_of', ['airframe', ...PRODUCTS] as const),
  in: count('counter_in', 2212, MOST),
  out: count('counter_out', 2212, MOST),
  offset: count('counter_offset', 0, MOST).optional(),
});

export const Meters = part('meters', {
  readings: list('meters_readings', Meter, { max: 12 }),
  counters: list('meters_counters', Counter, { max: 24 }).optional(),
  landings: count('meters_landings', 2311).optional(),
  landingsIn: count('meters_landingsIn', 2309).optional(),
  groundRunMinutes: number('meters_groundRunMinutes', 'min', 22, {
    min: 0,
    max: 10_000,
  }).optional(),
  note: line('meters_note', 'Tacho replaced 2019').optional(),
});
export type Meters = z.infer<typeof Meters>;
