import { describe, expect, test } from 'vitest';
import type { OpenItem } from '../../../../worker/core/calc/open-items/open-item.ts';
import { NO_READINGS, readingsWith } from '../../../../worker/core/calc/open-items/readings.ts';
import { timeLeft } from '../../../../worker/core/calc/open-items/time-left.ts';
import { readVisit } from '../read-visit.ts';

// The demo aircraft: 1204.9 h of the airframe, 1204.5 h of the engine, 2311 landings.
const VISIT = readVisit('nose-wheel-full');
const READINGS = readingsWith(NO_READINGS, VISIT);
const AT = '2026-11-05T14:20:00+01:00';

const item = (id: string, more: Partial<OpenItem>): OpenItem => ({
  item: `Q-SLM-P1/${id}`,
  id,
  kind: 'due',
  text: id,
  until: {},
  of: 'airframe',
  ...more,
});

const left = (more: Partial<OpenItem>) => timeLeft([item('A', more)], READINGS, AT)[0];

describe('timeLeft()', () => {
  test('counts each clock from the visit, hours on the meter that the item names', () => {
    expect(left({ until: { date: '2026-11-15', hours: 1214.9, landings: 2321 } })).toMatchObject({
      daysLeft: 10,
      hoursLeft: expect.closeTo(10, 9),
      landingsLeft: 10,
      isOverdue: false,
    });
    expect(left({ until: { hours: 1214.5 }, of: 'engine' })?.hoursLeft).toBeCloseTo(10, 9);
    expect(left({ until: { hours: 1214.5 }, of: 'engine', meter: 'engine' })?.hoursLeft).toBeCloseTo(10, 9);
  });

  test('falls back to the product where this visit has no such meter, and knows nothing without one', () => {
    expect(left({ until: { hours: 1214.9 }, meter: 'gone' })?.hoursLeft).toBeCloseTo(10, 9);
    expect(timeLeft([item('A', { until: { hours: 1214.9 } })], NO_READINGS, AT)[0]).not.toHaveProperty('hoursLeft');
  });

  test('counts from where a meter was read last, where this visit did not read it', () => {
    const before = readingsWith(NO_READINGS, VISIT, { pack: 'Q-SLM-P1' });
    const { meters, ...unread } = VISIT;
    const hoursLeft = (visit: typeof VISIT, more: Partial<OpenItem>) =>
      timeLeft([item('A', more)], readingsWith(before, visit), AT)[0]?.hoursLeft;
    expect(hoursLeft(unread, { until: { hours: 1214.9 } })).toBeCloseTo(10, 9);
    const airframe = (meters?.readings ?? [])
      .filter(({ of }) => of === 'airframe')
      .map((reading) => ({ ...reading, outHours: 1300 }));
    const later = { ...unread, meters: { readings: airframe } };
    expect(hoursLeft(later, { until: { hours: 1310 } })).toBeCloseTo(10, 9);
    // The engine was not read: it has run no less than it had.
    expect(hoursLeft(later, { until: { hours: 1214.5 }, of: 'engine' })).toBeCloseTo(10, 9);
    // A meter of another name counts the same product, and was read later.
    expect(hoursLeft(later, { until: { hours: 1310 }, meter: 'gone' })).toBeCloseTo(10, 9);
  });

  test('is overdue on any clock, and within the tolerance only on all', () => {
    expect(left({ until: { date: '2026-11-04' } })).toMatchObject({ isOverdue: true, isWithinTolerance: false });
    expect(left({ until: { date: '2026-11-05' } })).toMatchObject({ isOverdue: false });
    const both = { until: { date: '2026-11-04', hours: 1200 }, toleranceMonths: 1 };
    expect(left(both)).toMatchObject({ isOverdue: true, isWithinTolerance: false });
    expect(left({ ...both, toleranceHours: 10 })).toMatchObject({ isOverdue: true, isWithinTolerance: true });
    expect(left({ until: { landings: 2310 }, toleranceHours: 10 })).toMatchObject({ isWithinTolerance: false });
  });

  test('ends a tolerance at the end of a month, where its date is one and was counted to it', () => {
    const on = (today: string, more: Partial<OpenItem>) =>
      timeLeft([item('A', { toleranceMonths: 1, ...more })], READINGS, `${today}T12:00:00Z`)[0]?.isWithinTolerance;
    const february = { until: { date: '2026-02-28' } };
    expect(on('2026-03-31', { ...february, toEndOfMonth: true })).toBe(true);
    expect(on('2026-04-01', { ...february, toEndOfMonth: true })).toBe(false);
    expect(on('2026-03-29', february)).toBe(false);
    // Put off to another day since.
    expect(on('2026-03-16', { until: { date: '2026-02-15' }, toEndOfMonth: true })).toBe(false);
  });

  test('puts first what comes first, by date or by hours at the use stated, and what has no limit last', () => {
    // 90 h a year: 9 h are 36 days or so.
    const items = [
      item('none', {}),
      item('date', { until: { date: '2027-03-01' } }),
      item('hours', { until: { hours: 1213.9 } }),
      item('soon', { until: { date: '2026-11-20' } }),
    ];
    expect(timeLeft(items, READINGS, AT).map(({ id }) => id)).toEqual(['soon', 'hours', 'date', 'none']);
  });

  test('puts hours among dates also where nobody stated the use, and what is overdue before all', () => {
    const { hoursPerYear: _, ...unstated } = READINGS;
    const items = [
      item('far', { until: { date: '2027-02-24', hours: 1230 } }),
      item('near', { until: { hours: 1207.8 } }),
      item('over', { until: { hours: 1204.8 } }),
      item('date', { until: { date: '2026-11-30' } }),
    ];
    const due = timeLeft(items, unstated, AT);
    expect(due.map(({ id }) => id)).toEqual(['over', 'near', 'date', 'far']);
    expect(due[1]).not.toHaveProperty('forecastDate');
  });
});
