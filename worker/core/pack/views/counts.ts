import { COUNT_TEXTS, type Count } from '../../record/counts.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';

/** Returns a number of landings, launches, cycles or starts, in words; fewer than none are those beyond a limit. */
export function countText(counts: Count, value: number, fmt: Formatter): string {
  return fmt.text(COUNT_TEXTS[counts], { landings: Math.abs(value), figure: fmt.plain(value, 0) });
}

/** Returns a number of days, in words; fewer than none are days beyond a limit. */
export function daysText(days: number, fmt: Formatter): string {
  return fmt.text(m.counts_days, { days: Math.abs(days), figure: fmt.plain(days, 0) });
}
