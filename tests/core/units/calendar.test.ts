import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printDate, printTimestamp } from '../../../worker/core/text/dates.ts';
import {
  addMonths,
  dateOf,
  daysBetween,
  instantOf,
  isDate,
  isTimestamp,
  timeOf,
  timestampLike,
} from '../../../worker/core/units/calendar.ts';
import { RUNS } from '../../property-runs.ts';

const isoDates = fc
  .date({ min: new Date('1800-01-01T00:00:00Z'), max: new Date('2999-12-31T00:00:00Z'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

describe('isDate()', () => {
  test('knows the days of every month, and leap years of the Gregorian calendar', () => {
    for (const date of ['2028-02-29', '2000-02-29', '2026-04-30', '2026-12-31']) expect(isDate(date), date).toBe(true);
    for (const date of [
      '2027-02-29',
      '1900-02-29',
      '2100-02-29',
      '2026-04-31',
      '2026-13-01',
      '2026-00-10',
      '2026-01-00',
    ])
      expect(isDate(date), date).toBe(false);
    for (const text of ['', '2026-1-01', '26-01-01', '2026-01-01T00:00:00Z', ' 2026-01-01', '2026-01-01\n'])
      expect(isDate(text), text).toBe(false);
  });

  test('agrees with the platform on every date', () => {
    fc.assert(fc.property(isoDates, isDate), RUNS);
  });
});

test('isMoment() takes RFC 3339 with an offset, and nothing without', () => {
  for (const text of ['2026-11-03T16:20:00+01:00', '2026-11-03T16:20:00Z', '2026-11-03T23:59:59.999-05:30'])
    expect(isTimestamp(text), text).toBe(true);
  for (const text of [
    '2026-11-03T16:20:00',
    '2026-11-03T16:20+01:00',
    '2026-11-03 16:20:00Z',
    '2026-11-03T24:00:00Z',
    '2026-02-29T10:00:00Z',
    '2026-11-03T16:60:00Z',
    '2026-11-03T16:20:00+0100',
    '2026-11-03T16:20:00+15:00',
  ])
    expect(isTimestamp(text), text).toBe(false);
});

test('dateOf() and timeOf() keep the local date and time as written; instantOf() does not', () => {
  const [late, early] = ['2026-11-03T00:30:00+02:00', '2026-11-02T23:30:00+01:00'];
  expect([dateOf(late), timeOf(late)]).toEqual(['2026-11-03', '00:30']);
  expect(instantOf(late)).toBe(instantOf(early));
});

describe('addMonths()', () => {
  const cases: [date: string, months: number, moved: string][] = [
    ['2027-01-31', 1, '2027-02-28'],
    ['2028-01-31', 1, '2028-02-29'],
    ['2027-12-31', 2, '2028-02-29'],
    ['2027-03-31', -1, '2027-02-28'],
    ['2026-11-30', 3, '2027-02-28'],
    ['2028-02-29', 12, '2029-02-28'],
    ['2026-05-15', 24, '2028-05-15'],
    ['2026-01-10', -1, '2025-12-10'],
    ['2026-08-31', 0, '2026-08-31'],
    ['9999-12-31', 12, '9999-12-31'],
    ['9999-11-30', 1, '9999-12-30'],
    ['0000-01-31', -1, '0000-01-01'],
  ];
  for (const [date, months, moved] of cases)
    test(`${date} and ${months} months`, () => expect(addMonths(date, months)).toBe(moved));

  test('lands in the month meant, on a real day, never later in the month', () => {
    fc.assert(
      fc.property(isoDates, fc.integer({ min: -600, max: 600 }), (date, months) => {
        const moved = addMonths(date, months);
        const month = (text: string): number => Number(text.slice(0, 4)) * 12 + Number(text.slice(5, 7));
        expect(isDate(moved)).toBe(true);
        expect(month(moved) - month(date)).toBe(months);
        expect(Number(moved.slice(8)) <= Number(date.slice(8))).toBe(true);
      }),
      RUNS,
    );
  });
});

test('daysBetween() counts whole days, over leap days and back', () => {
  expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
  expect(daysBetween('2027-02-28', '2027-03-01')).toBe(1);
  expect(daysBetween('2026-03-29', '2026-03-28')).toBe(-1);
  expect(daysBetween('2000-01-01', '2400-01-01')).toBe(146_097);
});

test('printDate() writes every month in letters', () => {
  const printed = Array.from({ length: 12 }, (_, month) => printDate(`2026-${String(month + 1).padStart(2, '0')}-09`));
  expect(printed.map((text) => text.split('\u00a0')[1]).join(' ')).toBe(
    'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec',
  );
  expect(printed[4]).toBe('9\u00a0May\u00a02026');
});

test('printMoment() prints local time with its offset', () => {
  expect(printTimestamp('2026-11-03T16:20:00+01:00')).toBe('3\u00a0Nov\u00a02026 16:20\u00a0+01:00');
  expect(printTimestamp('2026-11-03T16:20:00-05:00')).toBe('3\u00a0Nov\u00a02026 16:20\u00a0\u221205:00');
  expect(printTimestamp('2026-11-03T16:20:00Z')).toBe('3\u00a0Nov\u00a02026 16:20\u00a0UTC');
});

describe('momentLike()', () => {
  test('writes an instant with the offset of another moment', () => {
    const instantMs = Date.parse('2026-11-05T23:30:00Z');
    expect(timestampLike('2026-11-03T09:10:00+01:00', instantMs)).toBe('2026-11-06T00:30:00+01:00');
    expect(timestampLike('2026-11-03T09:10:00-03:30', instantMs)).toBe('2026-11-05T20:00:00-03:30');
    expect(timestampLike('2026-11-03T09:10:00Z', instantMs)).toBe('2026-11-05T23:30:00Z');
  });

  test('is the same instant, whatever the offset', () => {
    const offsets = fc.constantFrom('Z', '+00:00', '+14:00', '-11:30', '+05:45');
    fc.assert(
      fc.property(offsets, fc.integer({ min: 0, max: 4e9 }), (offset, seconds) => {
        expect(instantOf(timestampLike(`2026-11-03T09:10:00${offset}`, seconds * 1000))).toBe(seconds * 1000);
      }),
      RUNS,
    );
  });
});
