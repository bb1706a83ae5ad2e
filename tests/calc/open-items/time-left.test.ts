import { describe, expect, test } from 'vitest';
import type { OpenItem } from '../../../worker/calc/open-items/open-item.ts';
import { timeLeft } from '../../../worker/calc/open-items/time-left.ts';
import { readVisit } from '../read-visit.ts';

// The demo aircraft: 1204.9 h of the airframe, 1204.5 h of the engine, 2311 landings.
const VISIT = readVisit('nose-wheel-full');
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

const left = (more: Partial<OpenItem>) => timeLeft([item('A', more)], VISIT, AT)[0];

describe('timeLeft()', () => {
  test('counts each clock from the visit, hours on the meter that the item names', () => {
    expect(left({ until: { date: '2026-11-15', hours: 1214.9, landings: 2321 } })).toMatchObject({
      daysLeft: 10,
      hoursLeft: expect.closeTo(10, 9),
      landingsLeft: 10,
      isOverdue: false,
    });
    expect(left({ until: { hours: 1214.5 }, of: 'engine' })?.hoursLeft).toBeCloseTo(10, 9);
    expect(left({ until: { hours: 1214.5 }, of: 'airframe', meter: 'engine' })?.hoursLeft).toBeCloseTo(10, 9);
  });

  test('falls back to the product where this visit has no such meter, and knows nothing without one', () => {
    expect(left({ until: { hours: 1214.9 }, meter: 'gone' })?.hoursLeft).toBeCloseTo(10, 9);
    const { meters: _, ...unread } = VISIT;
    expect(timeLeft([item('A', { until: { hours: 1214.9 } })], unread, AT)[0]).not.toHaveProperty('hoursLeft');
  });

  test('is overdue on any clock, and within the tolerance only on all', () => {
    expect(left({ until: { date: '2026-11-04' } })).toMatchObject({ isOverdue: true, isWithinTolerance: false });
    expect(left({ until: { date: '2026-11-05' } })).toMatchObject({ isOverdue: false });
    const both = { until: { date: '2026-11-04', hours: 1200 }, toleranceMonths: 1 };
    expect(left(both)).toMatchObject({ isOverdue: true, isWithinTolerance: false });
    expect(left({ ...both, toleranceHours: 10 })).toMatchObject({ isOverdue: true, isWithinTolerance: true });
    expect(left({ until: { landings: 2310 }, toleranceHours: 10 })).toMatchObject({ isWithinTolerance: false });
  });

  test('puts first what comes first, by date or by hours at the use stated, and what has no limit last', () => {
    // 90 h a year: 9 h are 36 days or so.
    const items = [
      item('none', {}),
      item('date', { until: { date: '2027-03-01' } }),
      item('hours', { until: { hours: 1213.9 } }),
      item('soon', { until: { date: '2026-11-20' } }),
    ];
    expect(timeLeft(items, VISIT, AT).map(({ id }) => id)).toEqual(['soon', 'hours', 'date', 'none']);
  });
});
