import type { DueList, VisitRecord } from '../../../worker/client/client.ts';
import type { OpenItem } from '../../../worker/core/calc/open-items/open-item.ts';
import { NO_READINGS, readingsWith } from '../../../worker/core/calc/open-items/readings.ts';
import { type OpenDue, timeLeft } from '../../../worker/core/calc/open-items/time-left.ts';
import type { Visit } from '../../../worker/core/record/visit.ts';

type DueItem = DueList['items'][number];

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
  const readings = readingsWith(NO_READINGS, visit);
  const left = new Map(timeLeft(due.comingDue.map(openItem), readings, at).map((one) => [one.item, one]));
  const counted = <Item extends { openItem: string; isOverdue: boolean }>(item: Item): Item & Left => ({
    ...item,
    ...leftOf(item, left.get(item.openItem)),
  });
  return {
    ...due,
    comingDue: due.comingDue.map(counted),
    items: due.items.map(counted),
    deferred: due.deferred.map(counted),
  };
}

function openItem(item: DueItem): OpenItem {
  const { openItem: name, id, kind, of, meter, counters, dueAfter } = item;
  const { dueDate: date, dueHours: hours, dueLandings: landings, dueCounts } = item;
  return {
    ...{ item: name, id, kind, text: '', of: of as OpenItem['of'] },
    until: {
      ...(date !== undefined && { date }),
      ...(hours !== undefined && { hours }),
      ...(landings !== undefined && { landings }),
      ...(dueCounts as OpenItem['until']),
    },
    ...(meter !== undefined && { meter }),
    ...(counters && { counters: counters as NonNullable<OpenItem['counters']> }),
    ...(dueAfter && { dueAfter }),
  };
}

type Left = Pick<DueItem, 'daysLeft' | 'hoursLeft' | 'landingsLeft' | 'countsLeft' | 'isOverdue' | 'isWithinTolerance'>;

function leftOf(counted: Partial<DueItem> & Pick<DueItem, 'isOverdue'>, now: OpenDue | undefined): Left {
  const hoursLeft = lesser(counted.hoursLeft, now?.hoursLeft);
  const landingsLeft = lesser(counted.landingsLeft, now?.landingsLeft);
  const countsLeft = now?.countsLeft && { ...now.countsLeft };
  for (const clock of ['launches', 'cycles', 'starts'] as const) {
    const left = lesser(counted.countsLeft?.[clock], countsLeft?.[clock]);
    if (countsLeft && left !== undefined) countsLeft[clock] = left;
  }
  // Only the service knows the tolerances; they apply to its own figures.
  const isAsCounted =
    hoursLeft === counted.hoursLeft &&
    landingsLeft === counted.landingsLeft &&
    JSON.stringify(countsLeft) === JSON.stringify(counted.countsLeft);
  return {
    hoursLeft,
    landingsLeft,
    countsLeft,
    daysLeft: lesser(counted.daysLeft, now?.daysLeft),
    isOverdue: counted.isOverdue || (now?.isOverdue ?? false),
    isWithinTolerance: isAsCounted && (counted.isWithinTolerance ?? false),
  };
}

/** Returns the smaller figure. A figure missing from this record is unknown, even if an earlier record had it. */
function lesser(counted: number | undefined, now: number | undefined): number | undefined {
  return now === undefined ? undefined : Math.min(now, counted ?? now);
}
