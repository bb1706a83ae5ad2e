import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';

/** Returns a number of landings, in words. */
export function landingsText(landings: number, fmt: Formatter): string {
  const figure = fmt.plain(landings, 0);
  return isOne(landings) ? fmt.text(m.counts_landing, { figure }) : fmt.text(m.counts_landings, { figure });
}

/** Returns a number of days, in words. */
export function daysText(days: number, fmt: Formatter): string {
  const figure = fmt.plain(days, 0);
  return isOne(days) ? fmt.text(m.counts_day, { figure }) : fmt.text(m.counts_days, { figure });
}

/** One, or one too many. */
const isOne = (count: number): boolean => Math.abs(count) === 1;
