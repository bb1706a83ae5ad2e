import type { DueList, VisitRecord } from '../../../worker/client/client.ts';
import { NO_READINGS, readingsWith } from '../../../worker/core/calc/open-items/readings.ts';
import { type OpenDue, timeLeft } from '../../../worker/core/calc/open-items/time-left.ts';
import type { Visit } from '../../../worker/core/record/visit.ts';

type DueItem = DueList['items'][number];
type Deferral = DueList['deferred'][number];
/** Due item or deferral as the service counts it from the newest pack. */
type Counted = Partial<DueItem> & Deferral;

/**
 * Recalculates the time left of open items from a record that is not released yet: the aircraft may have flown since
 * the newest pack, from which the service counts. The smaller of the two figures is used, because a corrected earlier
 * visit has lower meter readings.
 *
 * @param at time from which the time left is counted
 */
export function dueByRecord(due: DueList, record: Pick<VisitRecord, 'meters' | 'lives'>, at: string): DueList {
  // Meters and hours a year have the same form in record and calculation, so nothing is converted.
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
  // Only the service knows the tolerances; they apply to its own figures.
  const isAsCounted = hoursLeft === counted.hoursLeft && landingsLeft === counted.landingsLeft;
  return {
    hoursLeft,
    landingsLeft,
    daysLeft: lesser(counted.daysLeft, now?.daysLeft),
    isOverdue: counted.isOverdue || (now?.isOverdue ?? false),
    isWithinTolerance: isAsCounted && (counted.isWithinTolerance ?? false),
  };
}

/** Returns the smaller figure. A figure missing from this record is unknown, even if an earlier record had it. */
function lesser(counted: number | undefined, now: number | undefined): number | undefined {
  return now === undefined ? undefined : Math.min(now, counted ?? now);
}
