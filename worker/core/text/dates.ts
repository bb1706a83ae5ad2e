import { dateOf, offsetOf, timeOf } from '../units/calendar.ts';
import { FORMATS } from './generated/languages.ts';
import { type NumberFormat, writeDate } from './number-format.ts';

/** Formats a date for print, in English `3 Nov 2026`. */
export function printDate(date: string, format: NumberFormat = FORMATS.en): string {
  const [year = '', month = '1', day = '1'] = date.split('-');
  return writeDate(format.date, year, Number(month), Number(day));
}

/** Formats a timestamp for print, in English `3 Nov 2026 16:20 +01:00`. */
export function printTimestamp(moment: string, format: NumberFormat = FORMATS.en): string {
  const offset = offsetOf(moment);
  return `${printDate(dateOf(moment), format)}${format.beforeTime}${timeOf(moment)}\u00a0${offset === 'Z' ? 'UTC' : offset.replace('-', '\u2212')}`;
}
