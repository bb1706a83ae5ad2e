import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sunsetFor } from '../../../worker/calc/clock/daylight.ts';
import { instantOf } from '../../../worker/units/calendar.ts';
import { RUNS } from '../../property-runs.ts';

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

  test('is undefined where the sun stays above the horizon', () => {
    expect(sunsetFor({ latitudeDeg: 80, longitudeDeg: 0 }, '2026-06-21T12:00:00Z')).toBeUndefined();
  });
});
