import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, count, date, flag, identifier, line, list, number, part, pastDate, reference } from './field.ts';

export const LifeLimit = part('Interval', 'How often, by whichever comes first', {
  hours: number('Hours', 'Interval in hours', 'h', 100, { min: 0.1, max: 100_000 }).optional(),
  months: count('Months', 'Interval in calendar months', 12, { min: 1, max: 1200 }).optional(),
  landings: count('Landings', 'Interval in landings', 500, { min: 1, max: 1_000_000 }).optional(),
  toEndOfMonth: flag(
    'To end of month',
    'Whether the calendar interval runs to the last day of its month',
    false,
  ).optional(),
});

const counters = {
  hours: number('Hours', 'Total hours then, of what the meter named counts', 'h', 1204.6, {
    min: 0,
    max: 200_000,
  }).optional(),
  landings: count('Landings', 'Landings then', 2311, { max: 10_000_000 }).optional(),
};

export const Done = part('Done', 'When it was done', {
  date: pastDate('Date', 'Day', '2026-11-04', m.life_lastTimeDone).optional(),
  ...counters,
});

export const WasDue = part('Done', 'When it was done', {
  date: date('Date', 'Day', '2026-11-04').optional(),
  ...counters,
});

export const Life = part('Life', 'Something that comes due', {
  id: identifier(['due-line'], 'Identifier', 'How the record names this line', 'L04'),
  item: line('Item', 'What comes due', 'Oil and filter'),
  basis: choice('Basis', 'Why it comes due', [
    'directive',
    'life-limit',
    'programme',
    'recommendation',
    'owner',
  ] as const),
  meter: reference('meter', 'Meter', 'Meter that its hours are counted on', 'airframe').optional(),
  interval: LifeLimit,
  lastDone: Done,
  /** Counting from the point where it had been due keeps tolerances from adding up. */
  wasDueAt: WasDue.optional(),
  toleranceHours: number('Tolerance, hours', 'How much later it may be done', 'h', 10, {
    min: 0,
    max: 10_000,
  }).optional(),
  toleranceMonths: count('Tolerance, months', 'How much later it may be done', 1, { max: 120 }).optional(),
  reference: line('Reference', 'Where the interval stands', 'EM 05-20').optional(),
});
export type Life = z.infer<typeof Life>;

export const Lives = part('Lives', 'What comes due, and how fast', {
  hoursPerYear: number('Hours in a year', 'Use expected, for the forecast', 'h', 90, { min: 0, max: 8000 }).optional(),
  items: list('Items', 'Every line', Life, { max: 300 }),
});
export type Lives = z.infer<typeof Lives>;
