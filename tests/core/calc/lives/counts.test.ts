import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Due, dueList, type Life } from '../../../../worker/core/calc/lives/due.ts';
import type { Visit } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const AT = '2026-11-05T14:20:00+01:00';

type Meters = NonNullable<Visit['meters']>;
type Counter = NonNullable<Meters['counters']>[number];

const counter = (id: string, counts: Counter['counts'], out: number, more: Partial<Counter> = {}): Counter => ({
  ...{ id, counts, of: 'airframe' as const, in: out, out },
  ...more,
});

const METERS: Meters = {
  readings: [{ id: 'hours', of: 'airframe', basis: 'flight', inHours: 1840.2, outHours: 1840.2 }],
  landings: 2212,
  counters: [counter('winch', 'launches', 2212), counter('turbo', 'starts', 118, { of: 'engine', offset: 400 })],
};

function dueOf(life: Partial<Life>, meters: Meters = METERS): Due {
  const item: Life = { id: 'L', item: 'Line', basis: 'programme', interval: {}, lastDone: {}, ...life };
  const [due] = dueList({ ...readVisit('glider'), meters }, { items: [item] }, AT);
  if (!due) throw new Error('one line gives one due');
  return due;
}

describe('dueList() by counts', () => {
  test('is due one interval after the last time, on the counter of that count', () => {
    // Closed form: 1066 + 2000 = 3066, of which 2212 are flown.
    expect(dueOf({ interval: { launches: 2000 }, lastDone: { launches: 1066 } })).toMatchObject({
      dueCounts: { launches: 3066 },
      countsLeft: { launches: 854 },
      counters: [{ id: 'winch', counts: 'launches', of: 'airframe' }],
      isOverdue: false,
    });
  });

  test('adds what an earlier counter had counted', () => {
    // 118 + 400 = 518 starts, 2 beyond 516.
    const due = dueOf({ interval: { starts: 200 }, lastDone: { starts: 316 } });
    expect(due).toMatchObject({ dueCounts: { starts: 516 }, countsLeft: { starts: -2 }, isOverdue: true });
  });

  test('counts from where it had been due if the work was late, as 14 CFR 91.409(b) does for hours', () => {
    const late = { interval: { launches: 100 }, lastDone: { launches: 1106 }, wasDueAt: { launches: 1100 } };
    expect(dueOf(late).dueCounts).toEqual({ launches: 1200 });
  });

  test('takes landings from the log book, and from a counter only if the line names it', () => {
    const meters = { ...METERS, counters: [counter('water', 'landings', 40, { of: 'floats' })] };
    const life = { interval: { landings: 100 }, lastDone: { landings: 0 } };
    expect(dueOf({ ...life, interval: { landings: 2300 } }, meters).landingsLeft).toBe(88);
    expect(dueOf({ ...life, counters: ['water'] }, meters).landingsLeft).toBe(60);
  });

  test('knows nothing of what no counter counts', () => {
    const due = dueOf({ interval: { cycles: 700 }, lastDone: { cycles: 3 } });
    expect(due.dueCounts).toEqual({ cycles: 703 });
    expect(due.countsLeft).toBeUndefined();
    expect(due.isOverdue).toBe(false);
  });

  test('is due on a fixed date, or earlier by the months', () => {
    expect(dueOf({ interval: { date: '2031-05-31' } }).dueDate).toBe('2031-05-31');
    const both = { interval: { date: '2031-05-31', months: 24 } };
    expect(dueOf({ ...both, lastDone: { date: '2026-03-10' } }).dueDate).toBe('2028-03-10');
    expect(dueOf({ ...both, lastDone: { date: '2030-03-10' } }).dueDate).toBe('2031-05-31');
  });
});

describe('dueList() of a line that waits for all of its clocks', () => {
  const life = (launches: number, date: string): Partial<Life> => ({
    dueAfter: 'all',
    interval: { launches: 100, date },
    lastDone: { launches },
  });

  test('is overdue once every clock has passed, and by the first of them without that', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2000, max: 2300 }), fc.boolean(), (done, isPast) => {
        const line = life(done, isPast ? '2026-11-04' : '2026-11-05');
        const isSpent = done + 100 < 2212;
        expect(dueOf(line).isOverdue).toBe(isSpent && isPast);
        expect(dueOf({ ...line, dueAfter: 'first' }).isOverdue).toBe(isSpent || isPast);
      }),
      RUNS,
    );
  });

  test('is due by its only clock where it has one', () => {
    expect(dueOf({ dueAfter: 'all', interval: { date: '2026-11-04' } })).toMatchObject({
      dueAfter: undefined,
      isOverdue: true,
    });
  });

  test('is expected on the later of its days, and on no day if one of them is not known', () => {
    const due = (more: Partial<Life>) => {
      const item = { id: 'L', item: 'Line', basis: 'programme' as const, lastDone: {}, interval: {}, ...more };
      const visit = { ...readVisit('glider'), meters: METERS };
      return dueList(visit, { items: [item], hoursPerYear: 100 }, AT)[0]?.forecastDate;
    };
    // 100 h left at 100 h a year are 365 days.
    const hours = { interval: { hours: 100, date: '2026-12-01' }, lastDone: { hours: 1840.2 } };
    expect(due({ ...hours, dueAfter: 'all' })).toBe('2027-11-05');
    expect(due(hours)).toBe('2026-12-01');
    expect(due(life(2200, '2026-12-01'))).toBeUndefined();
  });
});
