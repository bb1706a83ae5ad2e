import fc from 'fast-check';
import geomagnetism from 'geomagnetism';
import { describe, expect, test } from 'vitest';
import { deviationAt } from '../../../../worker/core/calc/compass/coefficients.ts';
import { type CompassRecord, reduceSwing } from '../../../../worker/core/calc/compass/swing.ts';
import { variationAt } from '../../../../worker/core/calc/compass/variation.ts';
import { signedDifferenceDeg, wrap360 } from '../../../../worker/core/units/angle.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const { compass } = readVisit('nose-wheel-full');
if (!compass) throw new Error('the full visit has a compass swing');
const COMPASS: CompassRecord = compass;
const HEADINGS = [0, 45, 90, 135, 180, 225, 270, 315];

const swungWith = (deviations: readonly number[], change: Partial<CompassRecord> = {}): CompassRecord => ({
  ...COMPASS,
  ...change,
  swings: [
    {
      state: 'equipment-on',
      readings: HEADINGS.map((headingDeg, index) => ({
        headingDeg,
        compassDeg: wrap360(headingDeg - (deviations[index] ?? 0)),
      })),
    },
  ],
});

const eight = fc.array(fc.double({ min: -9, max: 9, noNaN: true }), { minLength: 8, maxLength: 8 });

describe('reduceSwing()', () => {
  test('a swing without a reading has no deviation and no card', () => {
    const [swing] = reduceSwing({ ...COMPASS, swings: [{ state: 'equipment-on', readings: [] }] }).swings;
    expect(swing).toMatchObject({ greatestDeviationDeg: 0, greatestResidualDeg: 0, card: [], coefficients: undefined });
  });

  test('the card inverts the deviation: who steers what it says flies what was wanted', () => {
    fc.assert(
      fc.property(eight, (deviations) => {
        const [swing] = reduceSwing(swungWith(deviations)).swings;
        const { coefficients, card } = swing ?? {};
        if (!coefficients || !card) throw new Error('eight headings give coefficients');
        expect(card.map(({ forDeg }) => forDeg)).toEqual(Array.from({ length: 12 }, (_, index) => index * 30));
        for (const { forDeg, steerDeg } of card) {
          const flown = steerDeg + deviationAt(coefficients, forDeg);
          expect(signedDifferenceDeg(forDeg, flown)).toBeCloseTo(0, 9);
          expect(steerDeg >= 0 && steerDeg < 360).toBe(true);
        }
      }),
      RUNS,
    );
  });

  test('deviation is what the coefficients give and the residual', () => {
    fc.assert(
      fc.property(eight, (deviations) => {
        const [swing] = reduceSwing(swungWith(deviations)).swings;
        if (!swing?.coefficients) throw new Error('eight headings give coefficients');
        for (const { headingDeg, deviationDeg, residualDeg } of swing.readings) {
          const wanted = deviations[HEADINGS.indexOf(headingDeg)] ?? Number.NaN;
          expect(deviationDeg).toBeCloseTo(wanted, 9);
          expect(deviationAt(swing.coefficients, headingDeg) + (residualDeg ?? Number.NaN)).toBeCloseTo(wanted, 9);
        }
      }),
      RUNS,
    );
  });

  test('takes the variation off true headings, so that A alone would show it', () => {
    const position = { latitudeDeg: 48.1, longitudeDeg: 16.6, elevationM: 180 };
    const [magnetic] = reduceSwing(swungWith([])).swings;
    const { swings, variation } = reduceSwing(swungWith([], { reference: 'true', position }));
    expect(magnetic?.coefficients?.A).toBeCloseTo(0, 9);
    expect(variation?.variationDeg).toBeGreaterThan(3);
    expect(swings[0]?.coefficients?.A).toBeCloseTo(-(variation?.variationDeg ?? Number.NaN), 9);
  });
});

test('variationAt() says for which days its edition was made, and answers outside them without a word elsewhere', () => {
  const place = { latitudeDeg: 48, longitudeDeg: 16 };
  const { validFrom, validUntil, variationDeg } = variationAt(place, '2040-01-01T00:00:00Z');
  // WMM-2025 is for 2025.0 to 2030.0: NOAA, from memory.
  expect([validFrom, validUntil]).toEqual(['2025-01-01', '2029-12-31']);
  expect(variationDeg).toBeCloseTo(variationAt(place, '2029-12-31T23:59:59Z').variationDeg, 9);
  expect(variationAt(place, '1990-01-01T00:00:00Z').validFrom).toBe('2015-01-01');
});

test('variationAt() takes the edition of the year, also before the next is due and after it was published', () => {
  const on = (date: string) => variationAt({ latitudeDeg: 48, longitudeDeg: 16 }, `${date}T12:00:00Z`);
  expect(
    ['2018-09-17', '2018-09-18', '2019-12-31', '2024-12-31', '2025-01-01', '2029-12-31'].map((date) => on(date).model),
  ).toEqual(['WMM-2015', 'WMM-2015v2', 'WMM-2015v2', 'WMM-2020', 'WMM-2025', 'WMM-2025']);
});

test('variationAt() agrees with the package on every day on which that serves the same edition', () => {
  const places = fc.record({
    latitudeDeg: fc.double({ min: -85, max: 85, noNaN: true }),
    longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
    elevationM: fc.double({ min: 0, max: 5000, noNaN: true }),
  });
  const days = fc.integer({ min: Date.parse('2015-01-02'), max: Date.parse('2029-11-13') });
  fc.assert(
    fc.property(places, days, (place, day) => {
      const model = geomagnetism.model(new Date(day));
      const found = variationAt(place, new Date(day).toISOString());
      if (model.name !== found.model) return;
      const { decl } = model.point([place.latitudeDeg, place.longitudeDeg, place.elevationM / 1000]);
      // The package counts every year with 365 days, which is off by up to a day.
      expect(Math.abs(((found.variationDeg - decl + 540) % 360) - 180)).toBeLessThan(0.02);
    }),
    RUNS,
  );
});
