import type { Formatter } from '../../text/formatter.ts';
import { daysText } from './counts.ts';

const HOUR_MIN = 60;
/** Min. duration printed in days: hours and minutes add nothing to it. */
const DAYS_FROM_MIN = 48 * HOUR_MIN;

/**
 * Returns a duration in everyday form: minutes, hours and minutes, or whole days.
 *
 * @example durationText(460, fmt)  // '7 h 40 min'
 */
export function durationText(minutes: number, fmt: Formatter): string {
  if (minutes >= DAYS_FROM_MIN) return daysText(Math.floor(minutes / (24 * HOUR_MIN)), fmt);
  const [hours, rest] = [Math.floor(minutes / HOUR_MIN), Math.floor(minutes % HOUR_MIN)];
  const ofMinutes = `${fmt.plain(rest, 0)}\u00a0min`;
  return hours === 0 ? ofMinutes : `${fmt.plain(hours, 0)}\u00a0h ${ofMinutes}`;
}
