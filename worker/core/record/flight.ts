import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, count, identifier, line, list, number, part, person, prose, reference, timestamp } from './field.ts';

export const Flight = part('flight', {
  id: identifier(['flight'], 'flight_id', 'V1'),
  by: person('flight_by', 'jonas', m.flight_flew),
  from: timestamp('flight_from', '2026-11-05T13:50:00+01:00', m.flight_takeOff, {
    early: 'The flight test that an earlier release left open may be flown before the arrival',
    late: 'A flight may follow the end of work, before the release',
  }),
  minutes: number('flight_minutes', 'min', 24, { min: 1, max: 3000 }),
  landings: count('flight_landings', 2, { max: 1000 }),
  purpose: choice('flight_purpose', ['test', 'check', 'ferry'] as const),
  for: list('flight_for', reference('modification', 'flight_for', 'M1'), { max: 60 }).optional(),
  openItems: list('flight_openItems', line('flight_openItems', 'Q-SLM-P1/M2', 100), { max: 60 }).optional(),
  report: prose('flight_report', 'Trim, stall and climb as in the flight test schedule; nothing to correct.'),
  result: choice('flight_result', ['satisfactory', 'unsatisfactory'] as const),
});
export type Flight = z.infer<typeof Flight>;

export const Flights = list('flights', Flight, { max: 60 });
