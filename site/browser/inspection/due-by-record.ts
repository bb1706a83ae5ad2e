import type { DueList, VisitRecord } from '../../../worker/client/client.ts';
import { NO_READINGS, readingsWith } from '../../../worker/core/calc/open-items/readings.ts';
import { type OpenDue, timeLeft } from '../../../worker/core/calc/open-items/time-left.ts';
import type { Visit } from '../../../worker/core/record/visit.ts';

type DueItem = DueList['items'][number];
type Deferral = DueList['deferred'][number];
/** What the service counts by the newest pack. */
type Counted = Partial<DueItem> & Deferral;

/**
 * What stands open with the time left by a record that is no pack yet: the aircraft flew on since the pack that the service counts
 * from. Of two figures the lesser is taken, for an earlier visit that is corrected reads less than was flown.
 *
 * @param at the moment that it is looked at from
 */
export function dueByRecord(due: DueList, record: Pick<VisitRecord, 'meters' | 'lives'>, at: string): DueList {
  // Meters and hours a year are in a record as they are in the calculation, so nothing has to be converted.
  const visit = record as Pick<Visit, 'meters' | 'lives'> as Visit;
  const counted: Counted[] = [...due.items.map(itemCounted), ...due.deferred];
  const items = counted.map(({ id, openItem, of, meter, untilDate, untilHours, dueLandings }) => ({
    item: openItem,
    id,
    kind: 'due' as const,
    text: '',
    until: {
      ...(untilDate !== undefined && { date: untilDate }),
      ...(untilHours !== undefined && { hours: untilHours }),
      ...(dueLandings !== undefined && { landings: dueLandings }),
    },
    of: (of ?? 'airframe') as OpenDue['of'],
    ...(meter !== undefined && { meter }),
  }));
  const left = new Map(timeLeft(items, readingsWith(NO_READINGS, visit), at).map((one) => [one.item, one]));
  return {
    ...due,
    items: due.items.map((item) => ({ ...item, ...leftOf(item, left.get(item.openItem)) })),
    deferred: due.deferred.map((item) => ({ ...item, ...leftOf(item, left.get(item.openItem)) })),
  };
}

const itemCounted = (item: DueItem): Counted => ({
  ...item,
  text: item.item,
  untilDate: item.dueDate,
  untilHours: item.dueHours,
});

function leftOf(counted: Partial<DueItem> & Pick<DueItem, 'isOverdue'>, now: OpenDue | undefined) {
  const hoursLeft = lesser(counted.hoursLeft, now?.hoursLeft);
  const landingsLeft = lesser(counted.landingsLeft, now?.landingsLeft);
  // How far a tolerance reaches the service alone knows: it says so of its own figures.
  const isAsCounted = hoursLeft === counted.hoursLeft && landingsLeft === counted.landingsLeft;
  return {
    hoursLeft,
    landingsLeft,
    daysLeft: lesser(counted.daysLeft, now?.daysLeft),
    isOverdue: counted.isOverdue || (now?.isOverdue ?? false),
    isWithinTolerance: isAsCounted && (counted.isWithinTolerance ?? false),
  };
}

/** What this record does not tell is not known, whatever an earlier one told. */
function lesser(counted: number | undefined, now: number | undefined): number | undefined {
  return now === undefined ? undefined : Math.min(now, counted ?? now);
}
