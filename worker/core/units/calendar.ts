/** Calendar arithmetic on ISO 8601 text. Pure: the current time always comes in as a value. */

export const DAY_MS = 86_400_000;

// A date of the record has four digits for its year. What is computed from one may lie beyond: it is then the first or
// last day that they can write, because a fifth digit is not a date to any reader of ISO 8601.
const FIRST_DATE = '0000-01-01';
const LAST_DATE = '9999-12-31';
const FIRST_MS = Date.parse(`${FIRST_DATE}T00:00:00Z`);
const LAST_MS = Date.parse(`${LAST_DATE}T23:59:59.999Z`);

/** Whether a text is a real date, `2028-02-29` yes and `2027-02-29` no. */
export function isDate(text: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return false;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  return month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

/** Returns the days of a month of the Gregorian calendar. */
function daysInMonth(year: number, month: number): number {
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  if (month === 2) return isLeap ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Whether a text is a timestamp with seconds and offset in the form of RFC 3339, `2026-11-03T16:20:00+01:00`. */
export function isTimestamp(text: string): boolean {
  const parts = /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,3})?(Z|[+-](0\d|1[0-4]):[0-5]\d)$/.exec(
    text,
  );
  return parts !== null && isDate(parts[1] ?? '');
}

/** Returns the local calendar date of a timestamp, as written: zones are not converted. */
export function dateOf(moment: string): string {
  return moment.slice(0, 10);
}

/** Returns the local time of a timestamp, as written, to the minute. */
export function timeOf(moment: string): string {
  return moment.slice(11, 16);
}

/** Returns milliseconds since the epoch of a timestamp with its offset. */
export function instantOf(moment: string): number {
  return Date.parse(moment);
}

/**
 * Returns a timestamp with the offset of another: the same instant, as people there read it.
 *
 * @example inZoneOf('2026-11-05T14:20:00+01:00', '2026-11-05T14:00:00Z')  // '2026-11-05T15:00:00+01:00'
 */
export function inZoneOf(like: string, moment: string): string {
  return offsetOf(like) === offsetOf(moment) ? moment : timestampLike(like, instantOf(moment));
}

/**
 * Returns an instant in UTC, to the millisecond; one outside the years 0 to 9999 as the first or last of them.
 *
 * @example utcTimestamp(0)  // '1970-01-01T00:00:00.000Z'
 */
export function utcTimestamp(instantMs: number): string {
  return new Date(Math.min(Math.max(instantMs, FIRST_MS), LAST_MS)).toISOString();
}

/**
 * Returns an instant with the offset of a timestamp, to the second or finer if it has fractions: the local time there.
 *
 * @param instantMs milliseconds since the epoch
 * @example timestampLike('2026-11-05T14:20:00+01:00', Date.parse('2026-11-05T14:00:00Z'))  //
 *   '2026-11-05T15:00:00+01:00'
 */
export function timestampLike(moment: string, instantMs: number): string {
  const offset = offsetOf(moment);
  const [hours = 0, minutes = 0] = offset === 'Z' ? [] : offset.slice(1).split(':').map(Number);
  const aheadMin = (offset.startsWith('-') ? -1 : 1) * (hours * 60 + minutes);
  const local = utcTimestamp(instantMs + aheadMin * 60_000);
  return `${local.endsWith('.000Z') ? local.slice(0, 19) : local.slice(0, 23)}${offset}`;
}

/** Returns the offset of a timestamp, `+01:00` or `Z`. */
export function offsetOf(moment: string): string {
  return /(Z|[+-]\d{2}:\d{2})$/.exec(moment)?.[0] ?? 'Z';
}

/** Returns whole days from one date to another; negative if `to` is earlier. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

/**
 * Adds whole months to a date; in a shorter month, returns its last day. Beyond the year 9999 returns its last day.
 *
 * @example addMonths('2027-01-31', 1)  // '2027-02-28'
 */
export function addMonths(date: string, months: number): string {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const count = year * 12 + (month - 1) + months;
  const targetYear = Math.floor(count / 12);
  const targetMonth = count - targetYear * 12;
  if (targetYear > 9999) return LAST_DATE;
  if (targetYear < 0) return FIRST_DATE;
  return isoDate(targetYear, targetMonth + 1, Math.min(day, daysInMonth(targetYear, targetMonth + 1)));
}

/** Returns the last day of the month of a date. */
export function endOfMonth(date: string): string {
  const [year = 0, month = 1] = date.split('-').map(Number);
  return isoDate(year, month, daysInMonth(year, month));
}

function isoDate(year: number, month: number, day: number): string {
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
