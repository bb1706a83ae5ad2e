import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type AltimeterTest,
  altimeterFigures,
  altimeterOmissions,
} from '../../../../worker/core/calc/surveillance/altimeter.ts';
import {
  barometricDifferenceFt,
  frictionToleranceFt,
  scaleToleranceFt,
} from '../../../../worker/core/calc/surveillance/altimeter-limits.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

function fullTest(): AltimeterTest {
  const altimeter = readVisit('nose-wheel-full').surveillance?.altimeters?.[0];
  if (!altimeter) throw new Error('the full visit has an altimeter test');
  return altimeter;
}

/** Altitude in ft of a pressure in the standard atmosphere. */
const standardAltitudeFt = (pressureHpa: number): number =>
  (1 - (pressureHpa / 1013.25) ** (1 / 5.255_879_7)) / 6.875_585_6e-6;

describe('barometricDifferenceFt()', () => {
  test('follows the standard atmosphere within 1.2 ft over the whole scale', () => {
    for (let settingHpa = 952; settingHpa <= 1049; settingHpa += 0.25)
      expect(Math.abs(barometricDifferenceFt(settingHpa) + standardAltitudeFt(settingHpa))).toBeLessThan(1.2);
  });
});

describe('scaleToleranceFt() and frictionToleranceFt()', () => {
  test('never shrink with altitude', () => {
    const altitude = fc.double({ min: -1000, max: 50_000, noNaN: true });
    fc.assert(
      fc.property(altitude, altitude, (one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(scaleToleranceFt(low)).toBeLessThanOrEqual(scaleToleranceFt(high));
        expect(frictionToleranceFt(low)).toBeLessThanOrEqual(frictionToleranceFt(high));
      }),
      RUNS,
    );
  });
});

describe('altimeterFigures()', () => {
  test('every difference is what was read less what it is held against', () => {
    const figures = altimeterFigures(fullTest()).filter(({ terms }) => terms !== undefined);
    expect(figures.length).toBeGreaterThan(20);
    for (const { value, terms } of figures) expect(value).toBe((terms?.read ?? 0) - (terms?.against ?? 0));
  });
});

describe('altimeterOmissions()', () => {
  test('a test of everything leaves out nothing', () => {
    expect(altimeterOmissions(fullTest())).toEqual([]);
  });

  test('a higher maximum asks for the rows between', () => {
    expect(altimeterOmissions({ ...fullTest(), maximumFt: 16_000 })).toEqual([
      { figure: 'scale-error', at: [14_000, 16_000], unit: 'ft' },
      { figure: 'friction', at: [15_000], unit: 'ft' },
    ]);
  });

  test('a scale that does not reach a pressure does not owe it', () => {
    const { barometric, ...rest } = fullTest();
    if (!barometric) throw new Error('the full visit has a barometric scale');
    const points = barometric.points.filter(({ settingHpa }) => settingHpa > 960);
    expect(altimeterOmissions({ ...rest, barometric: { ...barometric, fromHpa: 955, points } })).toEqual([]);
    expect(altimeterOmissions({ ...rest, barometric: { ...barometric, points } })[0]?.at[0]).toBeCloseTo(951.6, 1);
  });

  test('names every part that the record lacks', () => {
    const { at, by, maximumFt, scale } = fullTest();
    const lacking = altimeterOmissions({ at, by, maximumFt, scale }).map(({ figure }) => figure);
    expect(lacking).toEqual(['hysteresis', 'after-effect', 'friction', 'case-leak', 'barometric-scale']);
  });
});
