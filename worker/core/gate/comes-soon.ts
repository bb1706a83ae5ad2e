import { isAtMost } from '../calc/numbers/limit-met.ts';
import type { OpenDue } from '../calc/open-items/time-left.ts';

const SOON_DAYS = 30;
const SOON_HOURS = 10;
const SOON_COUNTS = 10;

type Left = 'daysLeft' | 'hoursLeft' | 'landingsLeft' | 'countsLeft' | 'dueAfter';

/**
 * Whether an item is due soon: within 30 days, 10 hours, or 10 landings, launches, cycles or starts; on every clock, if
 * all of them have to expire.
 *
 * @source common practice, no source
 */
export function comesSoon(item: { [Name in Left]?: OpenDue[Name] | undefined }): boolean {
  const { daysLeft, hoursLeft, landingsLeft, countsLeft = {}, dueAfter } = item;
  const isSoon = (left: number | undefined, soon: number): boolean[] =>
    left === undefined ? [] : [isAtMost(left, soon)];
  const clocks = [
    ...isSoon(daysLeft, SOON_DAYS),
    ...isSoon(hoursLeft, SOON_HOURS),
    ...[landingsLeft, ...Object.values(countsLeft)].flatMap((left) => isSoon(left, SOON_COUNTS)),
  ];
  return dueAfter === 'all' ? clocks.length > 0 && clocks.every(Boolean) : clocks.some(Boolean);
}
