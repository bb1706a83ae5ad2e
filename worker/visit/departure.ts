import type * as z from 'zod';
import { Position } from './compass.ts';
import { line, moment, number, part } from './field.ts';

export const Departure = part('Departure', 'When and where the owner means to fly', {
  plannedAt: moment('Planned', 'Planned take-off', '2026-11-05T15:30:00+01:00'),
  latestAt: moment('Latest', 'Latest take-off, for weather or closing', '2026-11-05T16:00:00+01:00').optional(),
  limit: line(
    'Limit',
    'What sets the latest take-off',
    'Front from the west, ceiling below 1,000 ft from 17:00',
  ).optional(),
  destination: Position.optional(),
  tripMinutes: number('Trip', 'Planned time of flight', 'min', 55, { min: 0, max: 1440 }).optional(),
});
export type Departure = z.infer<typeof Departure>;
