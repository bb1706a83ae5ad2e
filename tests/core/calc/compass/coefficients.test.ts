import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Coefficients,
  coefficientsOf,
  correctionOf,
  deviationAt,
} from '../../../../worker/core/calc/compass/coefficients.ts';
import { greatestGapDeg } from '../../../../worker/core/calc/compass/coverage.ts';
import { RUNS } from '../../../property-runs.ts';

const degrees = fc.double({ min: -8, max: 8, noNaN: true });
const anyCoefficients = fc.record({ A: degrees, B: degrees, C: degrees, D: degrees, E: degrees });
const evenly = (count: number, from = 0): number[] =>
  Array.from({ length: count }, (_, index) => (from + (index * 360) / count) % 360);

/** At least six headings, none nearer than 20° to another, so that all five are told well. */
const spreadHeadings = fc
  .tuple(fc.uniqueArray(fc.nat(17), { minLength: 6, maxLength: 18 }), fc.nat(19))
  .map(([steps, from]) => steps.map((step) => step * 20 + from))
  .filter((headings) => greatestGapDeg(headings) <= 90);

const swing = (coefficients: Coefficients, headings: readonly number[]) =>
  headings.map((headingDeg) => ({ headingDeg, deviationDeg: deviationAt(coefficients, headingDeg) }));

function expectSame(found: Coefficients | undefined, wanted: Coefficients): void {
  for (const name of ['A', 'B', 'C', 'D', 'E'] as const) expect(found?.[name], name).toBeCloseTo(wanted[name], 5);
}

describe('coefficientsOf()', () => {
  test('finds the coefficients again from any six or more headings that are spread', () => {
    fc.assert(
      fc.property(anyCoefficients, spreadHeadings, (coefficients, headings) => {
        expectSame(coefficientsOf(swing(coefficients, headings)), coefficients);
      }),
      RUNS,
    );
  });

  test('does not depend on the order of the readings', () => {
    fc.assert(
      fc.property(anyCoefficients, spreadHeadings, (coefficients, headings) => {
        const readings = swing(coefficients, headings);
        const [forward, backward] = [coefficientsOf(readings), coefficientsOf(readings.toReversed())];
        expect(forward).toBeDefined();
        expectSame(backward, forward ?? coefficients);
      }),
      RUNS,
    );
  });

  test('moves A alone when every deviation is off by the same', () => {
    fc.assert(
      fc.property(anyCoefficients, degrees, (coefficients, off) => {
        const readings = swing(coefficients, evenly(8)).map(({ headingDeg, deviationDeg }) => ({
          headingDeg,
          deviationDeg: deviationDeg + off,
        }));
        expectSame(coefficientsOf(readings), { ...coefficients, A: coefficients.A + off });
      }),
      RUNS,
    );
  });

  test('leaves D and E at zero where only three to five headings were read', () => {
    for (const count of [3, 4, 5])
      expectSame(coefficientsOf(swing({ A: 1, B: 2, C: -3, D: 0, E: 0 }, evenly(count, 10))), {
        A: 1,
        B: 2,
        C: -3,
        D: 0,
        E: 0,
      });
  });

  test('leaves D and E at zero where a quarter of the circle and more was not read', () => {
    const wide = [0, 30, 60, 90, 120, 150, 180, 255];
    expect(greatestGapDeg(wide)).toBe(105);
    expectSame(coefficientsOf(swing({ A: 1, B: 2, C: -3, D: 0, E: 0 }, wide)), { A: 1, B: 2, C: -3, D: 0, E: 0 });
    const disturbed = swing({ A: 1, B: 2, C: -3, D: 4, E: 5 }, wide);
    expect(coefficientsOf(disturbed)).toMatchObject({ D: 0, E: 0 });
  });

  test('leaves D and E at zero where six readings are of four directions', () => {
    const four = [0, 5, 90, 180, 180, 270];
    expect(coefficientsOf(swing({ A: 1, B: 2, C: -3, D: 4, E: 5 }, four))).toMatchObject({ D: 0, E: 0 });
  });

  test('is undefined where the headings do not go round the circle', () => {
    for (const headings of [[0, 10, 20, 30, 40, 50], evenly(8).map((heading) => heading / 2), [0, 120, 239]])
      expect(coefficientsOf(swing({ A: 0, B: 1, C: 1, D: 0, E: 0 }, headings)), headings.join()).toBeUndefined();
    expect(coefficientsOf(swing({ A: 0, B: 1, C: 1, D: 0, E: 0 }, [0, 120, 240]))).toBeDefined();
  });

  test('never gives between the headings more than a few times what was read on them', () => {
    const readings = fc.array(fc.tuple(fc.double({ min: 0, max: 360, noNaN: true }), degrees), {
      minLength: 3,
      maxLength: 24,
    });
    fc.assert(
      fc.property(readings, (read) => {
        const deviations = read.map(([headingDeg, deviationDeg]) => ({ headingDeg, deviationDeg }));
        const found = coefficientsOf(deviations);
        if (!found) return;
        const most = Math.max(...deviations.map(({ deviationDeg }) => Math.abs(deviationDeg)));
        for (const heading of evenly(36)) expect(Math.abs(deviationAt(found, heading))).toBeLessThan(4 * most + 1e-6);
      }),
      RUNS,
    );
  });

  test('is undefined where the headings cannot tell even three', () => {
    expect(coefficientsOf(swing({ A: 1, B: 2, C: 3, D: 0, E: 0 }, [90, 270]))).toBeUndefined();
    expect(coefficientsOf(swing({ A: 1, B: 2, C: 3, D: 0, E: 0 }, [45, 45, 45, 45, 45, 45]))).toBeUndefined();
  });
});

describe('correctionOf()', () => {
  test('agrees with the fit on the four cardinal headings', () => {
    fc.assert(
      fc.property(degrees, degrees, degrees, (A, B, C) => {
        const readings = swing({ A, B, C, D: 0, E: 0 }, [0, 90, 180, 270]).map((reading) => ({
          ...reading,
          compassDeg: reading.headingDeg - reading.deviationDeg,
        }));
        const correction = correctionOf(readings);
        expect(correction?.B).toBeCloseTo(B, 9);
        expect(correction?.C).toBeCloseTo(C, 9);
      }),
      RUNS,
    );
  });

  test('takes a heading within 5° of a cardinal one, across north too, and no other', () => {
    const readings = (north: number) =>
      [north, 90, 180, 270].map((headingDeg) => ({ headingDeg, compassDeg: headingDeg, deviationDeg: 0 }));
    expect(correctionOf(readings(355))).toBeDefined();
    expect(correctionOf(readings(5))).toBeDefined();
    expect(correctionOf(readings(354))).toBeUndefined();
    expect(correctionOf(readings(6))).toBeUndefined();
  });
});
