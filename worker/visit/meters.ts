import type * as z from 'zod';
import { choice, count, identifier, line, list, number, part } from './field.ts';

export const Meter = part('Meter', 'A running meter read at arrival and at release', {
  id: identifier(['meter'], 'Identifier', 'How the record names this meter', 'airframe-hours'),
  of: choice('Of', 'What it counts for', ['airframe', 'engine', 'propeller'] as const),
  basis: choice('Basis', 'How it counts', ['flight', 'tacho', 'hour-meter'] as const),
  inHours: number('In', 'Reading at arrival', 'h', 1204.6, { min: 0, max: 200_000 }),
  outHours: number('Out', 'Reading at release', 'h', 1204.9, { min: 0, max: 200_000 }),
  offsetHours: number(
    'Offset',
    'What is added to the reading for total time, after a meter was replaced',
    'h',
    0,
  ).optional(),
});

export const Meters = part('Meters', 'Times and landings', {
  readings: list('Readings', 'Every meter', Meter, { max: 12 }),
  landings: count('Landings', 'Total landings', 2311).optional(),
  groundRunMinutes: number('Ground running', 'Total engine running on the ground during the visit', 'min', 22, {
    min: 0,
    max: 10_000,
  }).optional(),
  note: line('Note', 'What a reader must know about these readings', 'Tacho replaced 2019').optional(),
});
export type Meters = z.infer<typeof Meters>;
