import { isAtMost } from '../calc/numbers/limit-met.ts';

const SOON_DAYS = 30;
const SOON_HOURS = 10;

/**
 * Whether an item is due soon.
 *
 * @source common practice, no source
 */
export function comesSoon({
  daysLeft,
  hoursLeft,
}: {
  daysLeft?: number | undefined;
  hoursLeft?: number | undefined;
}): boolean {
  return (
    (daysLeft !== undefined && daysLeft <= SOON_DAYS) || (hoursLeft !== undefined && isAtMost(hoursLeft, SOON_HOURS))
  );
}
