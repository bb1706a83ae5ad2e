import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Due, dueList, type Life } from '../../../../worker/core/calc/lives/due.ts';
import type { Visit } from '../../../../worker/core/record/visit.ts';
import { addMonths, endOfMonth } from '../../../../worker/core/units/calendar.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const VISIT = readVisit('nose-wheel-full');
const AT = '2026-11-05T14:20:00+01:00';

function dueOf(life: Partial<Life>, visit: Visit = VISIT, hoursPerYear?: number): Due {
  const item: Life = { id: 'L', item: 'Line', basis: 'programme', interval: {}, lastDone: {}, ...life };
  const [due] = dueList(visit, { items: [item], hoursPerYear }, AT);
  if (!due) throw new Error('one line gives one due');
  return due;
}

const hours = fc.double({ min: 0, max: 5000, noNaN: true });
const intervals = fc.double({ min: 1, max: 500, noNaN: true });
const dates = fc
  .tuple(fc.integer({ min: 2000, max: 2030 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }))
  .map(([year, month, day]) => `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`);
const months = fc.integer({ min: 1, max: 144 });

describe('dueList() the next due', () => {
  test('never moves for work done late, and never past one interval for work done early', () => {
    fc.assert(
      fc.property(hours, intervals, fc.double({ min: -500, max: 500, noNaN: true }), (wasDue, every, late) => {
        const done = wasDue + late;
        const next = dueOf({
          interval: { hours: every },
          lastDone: { hours: done },
          wasDueAt: { hours: wasDue },
        }).dueHours;
        expect(next).toBeCloseTo(Math.min(wasDue, done) + every, 9);
      }),
      RUNS,
    );
  });

  test('by the calendar, never moves for work done late', () => {
    fc.assert(
      fc.property(dates, months, fc.integer({ min: 0, max: 24 }), fc.boolean(), (wasDue, every, late, toEndOfMonth) => {
        const interval = { months: every, toEndOfMonth };
        const lastDone = { date: addMonths(wasDue, late) };
        const late_ = dueOf({ interval, lastDone, wasDueAt: { date: wasDue } }).dueDate ?? '';
        const punctual = dueOf({ interval, lastDone: { date: wasDue }, wasDueAt: { date: wasDue } }).dueDate ?? '';
        const uncounted = dueOf({ interval, lastDone }).dueDate ?? '';
        expect(late_).toBe(punctual);
        expect(late_ <= uncounted).toBe(true);
      }),
      RUNS,
    );
  });

  test('does not add up tolerance over many intervals', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 1, maxLength: 40 }),
        (overruns) => {
          let due = 100;
          for (const overrun of overruns)
            due =
              dueOf({ interval: { hours: 100 }, lastDone: { hours: due + overrun }, wasDueAt: { hours: due } })
                .dueHours ?? Number.NaN;
          expect(due).toBeCloseTo(100 * (overruns.length + 1), 6);
        },
      ),
      RUNS,
    );
  });

  test('to the end of the month is the last day of the month in which it falls', () => {
    fc.assert(
      fc.property(dates, months, (date, every) => {
        const to = dueOf({ interval: { months: every, toEndOfMonth: true }, lastDone: { date } }).dueDate ?? '';
        const plain = dueOf({ interval: { months: every }, lastDone: { date } }).dueDate ?? '';
        expect(to).toBe(endOfMonth(plain));
        expect(to >= plain).toBe(true);
      }),
      RUNS,
    );
  });
});

describe('dueList() overdue', () => {
  const hoursNow = VISIT.meters?.readings.find(({ of }) => of === 'airframe')?.outHours ?? Number.NaN;
  const doneHoursAgo = (ago: number, life: Partial<Life> = {}): Due =>
    dueOf({ interval: { hours: 100 }, lastDone: { hours: hoursNow - ago }, toleranceHours: 10, ...life });

  test('begins after the last hour, and its tolerance ends after the last of that', () => {
    expect(doneHoursAgo(100)).toMatchObject({ isOverdue: false, isWithinTolerance: false });
    expect(doneHoursAgo(101)).toMatchObject({ isOverdue: true, isWithinTolerance: true });
    expect(doneHoursAgo(110.5)).toMatchObject({ isOverdue: true, isWithinTolerance: false });
  });

  test('by months counted to the end of a month, ends its tolerance at the end of a month', () => {
    const at = (today: string, toEndOfMonth: boolean): Due | undefined => {
      const interval = { months: 12, toEndOfMonth };
      const lastDone = { date: '2025-02-28' };
      const life: Life = { id: 'L', item: 'x', basis: 'programme', interval, lastDone, toleranceMonths: 1 };
      return dueList(VISIT, { items: [life] }, `${today}T12:00:00Z`)[0];
    };
    expect(at('2026-03-31', true)).toMatchObject({ isOverdue: true, isWithinTolerance: true });
    expect(at('2026-04-01', true)).toMatchObject({ isOverdue: true, isWithinTolerance: false });
    expect(at('2026-03-28', false)).toMatchObject({ isWithinTolerance: true });
    expect(at('2026-03-29', false)).toMatchObject({ isWithinTolerance: false });
  });

  test('by one clock is overdue whatever the others say', () => {
    const due = doneHoursAgo(1, {
      interval: { hours: 100, months: 12 },
      lastDone: { hours: hoursNow - 1, date: '2025-11-04' },
    });
    expect(due).toMatchObject({ isOverdue: true, isWithinTolerance: false, hoursLeft: expect.closeTo(99, 9) });
  });

  test('counts total time after a meter was replaced', () => {
    const readings = (VISIT.meters?.readings ?? []).map((meter) => ({ ...meter, outHours: 5, offsetHours: hoursNow }));
    const due = dueOf({ interval: { hours: 100 }, lastDone: { hours: hoursNow } }, { ...VISIT, meters: { readings } });
    expect(due.hoursLeft).toBeCloseTo(95, 9);
  });

  test('does not know what is left where the meter is not in the record', () => {
    const { meters: _meters, ...without } = VISIT;
    expect(dueOf({ interval: { hours: 100 }, lastDone: { hours: 1 } }, without).hoursLeft).toBeUndefined();
  });
});

test('dueList() puts first what is forecast first, by the calendar or by use', () => {
  const items: Life[] = [
    { id: 'LATE', item: 'x', basis: 'programme', interval: { months: 24 }, lastDone: { date: '2026-11-01' } },
    { id: 'NONE', item: 'x', basis: 'owner', interval: {}, lastDone: {} },
    { id: 'HOURS', item: 'x', basis: 'programme', interval: { hours: 100 }, lastDone: { hours: 1200 } },
    { id: 'SOON', item: 'x', basis: 'programme', interval: { months: 12 }, lastDone: { date: '2026-01-01' } },
  ];
  expect(dueList(VISIT, { items, hoursPerYear: 90 }, AT).map(({ id }) => id)).toEqual([
    'SOON',
    'HOURS',
    'LATE',
    'NONE',
  ]);
});
