import { describe, expect, test } from 'vitest';
import { hoursRead, NO_READINGS, readingsWith } from '../../../../worker/core/calc/open-items/readings.ts';
import type { Visit } from '../../../../worker/core/record/visit.ts';
import { readVisit } from '../read-visit.ts';

const FULL = readVisit('nose-wheel-full');

const read = (landings: number, ...meters: [id: string, of: string, outHours: number, offsetHours?: number][]): Visit =>
  ({
    ...FULL,
    lives: undefined,
    meters: {
      landings,
      readings: meters.map(([id, of, outHours, offsetHours = 0]) => {
        return { id, of, basis: 'hour-meter', inHours: outHours, outHours, offsetHours };
      }),
    },
  }) as unknown as Visit;

describe('readingsWith()', () => {
  const before = readingsWith(NO_READINGS, read(900, ['m1', 'engine', 100], ['m2', 'airframe', 1000]), { pack: 'P1' });

  test('takes what was read now, with what an earlier meter had counted, and keeps what was not', () => {
    const now = readingsWith(before, read(910, ['m2', 'airframe', 20, 1010]));
    expect(now).toEqual({
      meters: [
        { id: 'm2', of: 'airframe', hours: 1030 },
        { id: 'm1', of: 'engine', hours: 100, pack: 'P1' },
      ],
      landings: { count: 910 },
    });
  });

  test('holds two meters of one name apart by what they count', () => {
    const now = readingsWith(before, read(910, ['m1', 'propeller', 20]));
    expect(hoursRead(now, { of: 'engine', meter: 'm1' })).toBe(100);
    expect(hoursRead(now, { of: 'propeller', meter: 'm1' })).toBe(20);
  });

  test('lets a withdrawn pack say only that the aircraft has flown further', () => {
    const withdrawn = { pack: 'P2', isWithdrawn: true } as const;
    expect(readingsWith(before, read(890, ['m2', 'airframe', 990]), withdrawn)).toEqual(before);
    const further = readingsWith(before, read(920, ['m2', 'airframe', 1020]), withdrawn);
    expect(further.landings).toEqual({ count: 920, ...withdrawn });
    expect(hoursRead(further, { of: 'airframe' })).toBe(1020);
  });

  test('keeps the use that was stated last', () => {
    const stated = readingsWith(before, { ...read(900), lives: { hoursPerYear: 90, items: [] } } as unknown as Visit);
    expect(readingsWith(stated, read(900)).hoursPerYear).toBe(90);
  });
});

describe('hoursRead()', () => {
  test('goes by the newest reading of the product, and by the meter that is named among those', () => {
    const before = readingsWith(NO_READINGS, read(900, ['old', 'airframe', 1000]), { pack: 'P1' });
    const now = readingsWith(before, read(910, ['hobbs', 'airframe', 1500], ['new', 'airframe', 1040]));
    expect(hoursRead(now, { of: 'airframe', meter: 'new' })).toBe(1040);
    expect(hoursRead(now, { of: 'airframe', meter: 'old' })).toBe(1500);
    expect(hoursRead(now, { of: 'airframe' })).toBe(1500);
    expect(hoursRead(now, { of: 'engine' })).toBeUndefined();
  });
});
