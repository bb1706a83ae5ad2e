import type { Flight } from '../record/visit.ts';
import type { Formatter } from '../text/formatter.ts';
import * as m from '../text/generated/messages.ts';
import { countText } from './views/counts.ts';

const RESULTS = { satisfactory: m.flights_satisfactory, unsatisfactory: m.flights_unsatisfactory } as const;

export const flightResult = ({ result }: Flight, fmt: Formatter): string => fmt.text(RESULTS[result]);

/** Returns a flight in a line: identifier, day, purpose, minutes, landings and result. */
export function flightText(flight: Flight, fmt: Formatter): string {
  const { id, from, purpose, minutes, landings } = flight;
  return fmt.text(m.flights_line, {
    id,
    day: fmt.day(from),
    purpose: fmt.term(purpose),
    minutes: fmt.plain(minutes, 0),
    landings: countText('landings', landings, fmt),
    result: flightResult(flight, fmt),
  });
}
