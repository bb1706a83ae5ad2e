import type { Flight, Modification, Visit } from '../../record/visit.ts';
import { instantOf } from '../../units/calendar.ts';

type Flown = Pick<Visit, 'flights'>;

/**
 * Returns the last satisfactory flight after the end of a modification that names it: its flight test.
 *
 * @source common practice, no source
 */
export function flightTestOf(
  { flights = [] }: Flown,
  { id, finishedAt }: Pick<Modification, 'id' | 'finishedAt'>,
): Flight | undefined {
  return flights.findLast(
    ({ result, from, for: names = [] }) =>
      result === 'satisfactory' && names.includes(id) && instantOf(from) >= instantOf(finishedAt),
  );
}

/**
 * Returns minutes and landings of the flights between arrival and release; earlier ones are in the readings at arrival.
 *
 * @source common practice, no source
 */
export function flownInVisit({ flights = [], visit }: Flown & Pick<Visit, 'visit'>): {
  minutes: number;
  landings: number;
} {
  const since = flights.filter(({ from }) => instantOf(from) >= instantOf(visit.arrivedAt));
  const sum = (of: 'minutes' | 'landings'): number => since.reduce((total, flight) => total + flight[of], 0);
  return { minutes: sum('minutes'), landings: sum('landings') };
}

/**
 * Whether no later satisfactory flight names all that an unsatisfactory one names.
 *
 * @source common practice, no source
 */
export function isUnresolved(flight: Flight, flights: readonly Flight[]): boolean {
  if (flight.result === 'satisfactory') return false;
  const names = [...(flight.for ?? []), ...(flight.openItems ?? [])];
  return !flights.some(
    (later) =>
      later.result === 'satisfactory' &&
      instantOf(later.from) > instantOf(flight.from) &&
      names.every((name) => [...(later.for ?? []), ...(later.openItems ?? [])].includes(name)),
  );
}
