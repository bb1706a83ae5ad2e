import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { Position } from './compass.ts';
import { line, number, part, timestamp } from './field.ts';

/** A departure is planned, not done; DEPARTURE_BEFORE_READY checks if the work is ready by then. */
const PLANNED = {
  early: 'It may be past, and then is only late',
  late: 'It follows the work',
  future: 'It is planned',
};

export const Departure = part('departure', {
  plannedAt: timestamp('departure_plannedAt', '2026-11-05T15:30:00+01:00', m.departure_plannedTakeOff, PLANNED),
  latestAt: timestamp('departure_latestAt', '2026-11-05T16:00:00+01:00', m.departure_latestTakeOff, PLANNED).optional(),
  limit: line('departure_limit', 'Front from the west, ceiling below 1,000 ft from 17:00').optional(),
  destination: Position.optional(),
  tripMinutes: number('departure_tripMinutes', 'min', 55, { min: 0, max: 1440 }).optional(),
});
export type Departure = z.infer<typeof Departure>;
