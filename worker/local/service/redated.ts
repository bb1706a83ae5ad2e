import { DAY_MS } from '../../core/units/calendar.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** Date in a field or at the start of a timestamp; in words it may be anywhere. */
const DATE = /(?<![\d-])\d{4}-\d{2}-\d{2}(?![\d-])/g;
/** Date in words: `18 September 2026`. */
const DATE_IN_WORDS = new RegExp(`(?<!\\d)(\\d{1,2}) (${MONTHS.join('|')}) (\\d{4})(?!\\d)`, 'g');

const dayOf = (date: string): number => Date.parse(`${date.slice(0, 10)}T00:00:00Z`) / DAY_MS;
const dateOf = (day: number): string => new Date(day * DAY_MS).toISOString().slice(0, 10);

/**
 * Moves every date and timestamp of a record by the same number of whole days, so that its work ended yesterday: the
 * demo visit is then never so old that its authorisations and deferrals have expired. Dates in its texts move along;
 * times of day stay.
 */
export function redated<Record extends { visit: { workEndedAt?: string | undefined; arrivedAt: string } }>(
  record: Record,
  now: Date,
): Record {
  const ended = record.visit.workEndedAt ?? record.visit.arrivedAt;
  const days = Math.floor(now.getTime() / DAY_MS) - 1 - dayOf(ended);
  const move = (text: string): string =>
    text
      .replaceAll(DATE, (date) => dateOf(dayOf(date) + days))
      .replaceAll(DATE_IN_WORDS, (_, day: string, month: string, year: string) => {
        const then = Date.UTC(Number(year), MONTHS.indexOf(month), Number(day)) / DAY_MS;
        return inWords(dateOf(then + days));
      });
  return JSON.parse(JSON.stringify(record), (_key, value) => (typeof value === 'string' ? move(value) : value));
}

function inWords(date: string): string {
  const [year, month, day] = date.split('-').map(Number);
  return `${day} ${MONTHS[(month ?? 1) - 1]} ${year}`;
}
