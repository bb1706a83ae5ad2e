import type { Count } from '../../record/counts.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';

const COUNTED = {
  landings: m.counts_landings,
  launches: m.counts_launches,
  cycles: m.counts_cycles,
  starts: m.counts_starts,
} as const;

/** Returns a number of landings, launches, cycles or starts, in words; fewer than none are those beyond a limit. */
export function countText(counts: Count, value: number, fmt: Formatter): string {
  return fmt.text(COUNTED[counts], { landings: Math.abs(value), figure: fmt.plain(value, 0) });
}

/** Returns a number of days, in words; fewer than none are days beyond a limit. */
export function daysText(days: number, fmt: Formatter): string {
  return fmt.text(m.counts_days, { days: Math.abs(days), figure: fmt.plain(days, 0) });
}
