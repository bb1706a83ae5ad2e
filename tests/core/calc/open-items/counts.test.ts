import { describe, expect, test } from 'vitest';
import {
  canExtend,
  isPutOff,
  type OpenItem,
  withEarlierLimits,
} from '../../../../worker/core/calc/open-items/open-item.ts';
import { NO_READINGS, type Readings, readingsWith } from '../../../../worker/core/calc/open-items/readings.ts';
import { dueItems, timeLeft } from '../../../../worker/core/calc/open-items/time-left.ts';
import type { Visit } from '../../../../worker/core/record/visit.ts';

const AT = '2026-11-05T12:00:00Z';

const item = (id: string, more: Partial<OpenItem>): OpenItem => ({
  ...{ id, kind: 'due' as const, basis: 'programme' as const, text: id, until: {}, of: 'airframe' as const },
  ...more,
});

const on = (id: string): Partial<OpenItem> => ({ counters: [{ counts: 'cycles', id, of: 'battery' }] });

const read = (cycles: number, id = 'pack-a'): Visit =>
  ({
    meters: { readings: [], counters: [{ id, counts: 'cycles', of: 'battery', in: cycles, out: cycles }] },
  }) as unknown as Visit;

const READINGS: Readings = readingsWith(NO_READINGS, read(690), { pack: 'P1' });

describe('timeLeft() by a counter', () => {
  const left = (readings: Readings, id: string) =>
    timeLeft([item('L', { until: { cycles: 700 }, ...on(id) })], readings, AT)[0]?.countsLeft;

  test('counts from the last reading of that counter, and of no other', () => {
    const now = readingsWith(READINGS, read(12, 'pack-b'), { pack: 'P2' });
    expect(left(now, 'pack-a')).toEqual({ cycles: 10 });
    expect(left(now, 'pack-b')).toEqual({ cycles: 688 });
    expect(left(now, 'pack-c')).toBeUndefined();
  });

  test('takes a lower reading of a withdrawn pack for nothing', () => {
    const withdrawn = { pack: 'P2', isWithdrawn: true } as const;
    expect(readingsWith(READINGS, read(600), withdrawn).counters).toEqual(READINGS.counters);
    expect(left(readingsWith(READINGS, read(705), withdrawn), 'pack-a')).toEqual({ cycles: -5 });
  });
});

describe('open items on other clocks', () => {
  const cycles = item('L', { until: { cycles: 700 }, ...on('pack-a') });

  test('are put off by a later count, by none, by another counter, or by waiting for all clocks', () => {
    expect(isPutOff(cycles, { ...cycles, until: { cycles: 701 } })).toBe(true);
    expect(isPutOff(cycles, { ...cycles, until: { date: '2027-01-01' } })).toBe(true);
    expect(isPutOff(cycles, { ...cycles, ...on('pack-b') })).toBe(true);
    expect(isPutOff(cycles, { ...cycles, dueAfter: 'all' })).toBe(true);
    expect(isPutOff(cycles, { ...cycles, until: { cycles: 650 } })).toBe(false);
  });

  test('are extended only by an entry that has their clock', () => {
    expect(canExtend(cycles, { ...cycles, until: { cycles: 900 } })).toBe(true);
    expect(canExtend(cycles, { ...cycles, until: { launches: 900 } })).toBe(false);
  });

  test('keep the earlier of two limits, and take the counter of a limit that is new', () => {
    const other = item('L', {
      until: { cycles: 500, starts: 90 },
      counters: [...(cycles.counters ?? []), { counts: 'starts', id: 'eng', of: 'engine' }],
    });
    expect(withEarlierLimits(cycles, other)).toMatchObject({
      until: { cycles: 500, starts: 90 },
      counters: [
        { counts: 'cycles', id: 'pack-a' },
        { counts: 'starts', id: 'eng' },
      ],
    });
    expect(withEarlierLimits(cycles, { ...other, until: { cycles: 500 }, ...on('pack-b') }).until).toEqual({
      cycles: 700,
    });
  });

  test('of a monitored finding may get a later limit at the next look, but not none', () => {
    const watch = item('F6', { kind: 'watch', until: { date: '2026-12-01' } });
    expect(isPutOff(watch, { ...watch, until: { date: '2027-06-01' } })).toBe(false);
    expect(isPutOff(watch, { ...watch, until: {} })).toBe(true);
  });
});

describe('dueItems()', () => {
  test('is one list of every kind, the first due at the top, without findings that have no limit', () => {
    const items = [
      item('L1', { until: { date: '2027-03-01' } }),
      item('D2', { kind: 'bulletin', until: { date: '2026-12-15' } }),
      item('F4', { kind: 'deferral', until: { date: '2027-01-31' } }),
      item('F6', { kind: 'watch', until: { date: '2026-12-20' } }),
      item('F7', { kind: 'watch' }),
      item('x', { kind: 'limitation' }),
      // 10 cycles left: 4 in an hour of 300 a year come within days.
      item('L2', { until: { cycles: 700 }, ...on('pack-a') }),
    ];
    expect(dueItems(items, {}, READINGS, AT).map(({ id }) => id)).toEqual(['L2', 'D2', 'F6', 'F4', 'L1']);
  });
});
