import { near, type Stated } from '../record/near.ts';
import type { Place } from '../record/record-index.ts';
import { dateOf, instantOf } from '../units/calendar.ts';

/** Limit of a time: another time that it must not be before or after. */
export interface BrokenBound extends Stated {
  side: 'before' | 'after';
}

const ARRIVAL = 'visit.arrivedAt';

/** Finds the first limit that a time of the record breaks. */
export function brokenBound(place: Place<'timestamp'>): BrokenBound | undefined {
  const at = instantOf(place.value);
  for (const name of place.means.after) {
    const bound = near(place, name);
    if (bound && at < instantOf(bound.value) && !(name === ARRIVAL && isCarriedOver(place, bound.value)))
      return { ...bound, side: 'before' };
  }
  for (const name of place.means.before) {
    const bound = near(place, name);
    if (bound && at > instantOf(bound.value)) return { ...bound, side: 'after' };
  }
  return undefined;
}

/** Finds the first limit that a past date of the record breaks; of a limit with a time of day, its day counts. */
export function brokenDay(place: Place<'past-date'>): BrokenBound | undefined {
  const { after = [], before = [] } = place.means;
  for (const name of after) {
    const bound = near(place, name);
    if (bound && place.value < dateOf(bound.value)) return { ...bound, side: 'before' };
  }
  for (const name of before) {
    const bound = near(place, name);
    if (bound && place.value > dateOf(bound.value)) return { ...bound, side: 'after' };
  }
  return undefined;
}

// A finding deferred before this visit is older than the visit.
function isCarriedOver(place: Place<'timestamp'>, arrivedAt: string): boolean {
  const { earlierUntil } = place.means;
  const until = earlierUntil === undefined ? undefined : near(place, earlierUntil)?.value;
  return until !== undefined && dateOf(place.value) <= until && until < dateOf(arrivedAt);
}
