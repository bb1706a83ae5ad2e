import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';

/** Returns a number of landings, in words; fewer than none are landings beyond a limit. */
export function landingsText(landings: number, fmt: Formatter): string {
  return fmt.text(m.counts_landings, { landings: Math.abs(landings), figure: fmt.plain(landings, 0) });
}

/** Returns a number of days, in words; fewer than none are days beyond a limit. */
export function daysText(days: number, fmt: Formatter): string {
  return fmt.text(m.counts_days, { days: Math.abs(days), figure: fmt.plain(days, 0) });
}
