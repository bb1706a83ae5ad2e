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
 * Whether a modification requires a flight test that is not flown.
 *
 * @source common practice, no source
 */
export function isFlightTestOutstanding(
  visit: Flown,
  modification: Pick<Modification, 'id' | 'finishedAt' | 'flightTest'>,
): boolean {
  return modification.flightTest === 'owed' && flightTestOf(visit, modification) === undefined;
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

const namesOf = ({ for: names = [], openItems = [] }: Flight): string[] => [...names, ...openItems];

/**
 * Whether an unsatisfactory flight of the visit has something left to prove: a name that no later satisfactory flight
 * has, and whose flight test the release does not permit; or, if it names nothing, no later satisfactory flight. A
 * flight before the arrival leaves its open items open.
 *
 * @source common practice, no source
 */
export function isUnresolved(
  flight: Flight,
  { flights = [], release, visit }: Pick<Visit, 'flights' | 'release' | 'visit'>,
): boolean {
  const isOfVisit = instantOf(flight.from) >= instantOf(visit.arrivedAt);
  if (flight.result === 'satisfactory' || !isOfVisit) return false;
  const later = flights.filter(
    ({ result, from }) => result === 'satisfactory' && instantOf(from) > instantOf(flight.from),
  );
  const permitted = (release?.flightTestsAfterRelease ?? []).map(({ modification }) => modification);
  const proved = new Set([...later.flatMap(namesOf), ...permitted]);
  const names = namesOf(flight);
  return names.length === 0 ? later.length === 0 : !names.every((name) => proved.has(name));
}
