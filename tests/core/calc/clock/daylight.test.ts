import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isDark, sunsetFor } from '../../../../worker/core/calc/clock/daylight.ts';
import { instantOf } from '../../../../worker/core/units/calendar.ts';
import { RUNS } from '../../../property-runs.ts';

const places = fc.record({
  latitudeDeg: fc.double({ min: -60, max: 60, noNaN: true }),
  longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  elevationM: fc.double({ min: -400, max: 4000, noNaN: true }),
});
const moments = fc
  .date({ min: new Date('2020-01-01T00:00:00Z'), max: new Date('2035-01-01T00:00:00Z'), noInvalidDate: true })
  .map((date) => date.toISOString());

describe('sunsetFor()', () => {
  test('is less than a day away between the polar circles, and the same every time', () => {
    fc.assert(
      fc.property(places, moments, (place, moment) => {
        const found = sunsetFor(place, moment);
        expect(Math.abs(found?.minutesLeft ?? Number.NaN)).toBeLessThan(24 * 60);
        const apart = (instantOf(found?.at ?? '') - instantOf(moment)) / 60_000;
        expect(Math.abs(apart - (found?.minutesLeft ?? Number.NaN))).toBeLessThan(1 / 59);
        expect(sunsetFor(place, moment)).toEqual(found);
      }),
      RUNS,
    );
  });

  test('of the day before it and of the night after it is the same sunset', () => {
    const place = { latitudeDeg: 48, longitudeDeg: 16 };
    const [day, night] = ['2026-11-05T12:00:00Z', '2026-11-05T20:00:00Z'].map((moment) => sunsetFor(place, moment));
    expect(day?.at.slice(0, 16)).toBe(night?.at.slice(0, 16));
    expect(day?.minutesLeft).toBeGreaterThan(0);
    expect(night?.minutesLeft).toBeLessThan(0);
  });

  test('of the first day of the polar night is the last sunset', () => {
    // At 69.65 N the upper limb last shows about the 26th of November.
    const place = { latitudeDeg: 69.65, longitudeDeg: 18.96 };
    const last = [20, 21, 22, 23, 24, 25, 26, 27, 28, 29]
      .map((day) => sunsetFor(place, `2026-11-${day}T10:40:00Z`))
      .findLast((found) => found !== undefined && found.minutesLeft > 0);
    const hoursOn = new Date(Date.parse(last?.at ?? '') + 20 * 3_600_000).toISOString();
    expect(sunsetFor(place, hoursOn)?.at.slice(0, 16)).toBe(last?.at.slice(0, 16));
  });

  test('is undefined where the sun stays above the horizon', () => {
    expect(sunsetFor({ latitudeDeg: 80, longitudeDeg: 0 }, '2026-06-21T12:00:00Z')).toBeUndefined();
  });
});

// Polar night and midnight sun of towns beyond the polar circle: from memory, their dates as every almanac has them.
describe('isDark()', () => {
  const TROMSO = { latitudeDeg: 69.65, longitudeDeg: 18.96 };
  const LONGYEARBYEN = { latitudeDeg: 78.22, longitudeDeg: 15.65 };

  test('at noon and at midnight of the polar night', () => {
    expect(isDark(TROMSO, '2026-12-21T11:30:00+01:00')).toBe(true);
    expect(isDark(LONGYEARBYEN, '2026-12-21T23:30:00+01:00')).toBe(true);
  });

  test('not under the midnight sun', () => {
    expect(isDark(TROMSO, '2026-06-21T00:30:00+02:00')).toBe(false);
    expect(isDark(LONGYEARBYEN, '2026-08-01T00:30:00+02:00')).toBe(false);
  });

  test('agrees with rise and set wherever the sun does both', () => {
    fc.assert(
      fc.property(places, moments, (place, moment) => {
        const minutes = sunsetFor(place, moment)?.minutesLeft ?? Number.NaN;
        // Between them the two judge the same; within some minutes of the horizon the search is the better judge.
        if (Math.abs(minutes) > 10 && !isDark(place, moment)) expect(minutes).toBeGreaterThan(0);
      }),
      RUNS,
    );
  });
});
