import { printDate } from '../../units/calendar.ts';
import { printNumber } from '../../units/rounding.ts';

/** The limits of something to be done, such as `5 Jan 2027 or 1 250.0 h`; undefined where there is none. */
export function dueLimit(date: string | undefined, hours: number | undefined): string | undefined {
  const limits = [date && printDate(date), hours === undefined ? undefined : `${printNumber(hours, 1)} h`];
  return limits.filter(Boolean).join(' or ') || undefined;
}
