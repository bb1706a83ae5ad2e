import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printNumber, printSigned } from '../../../worker/core/text/numbers.ts';
import { roundForPrint } from '../../../worker/core/units/rounding.ts';
import { RUNS } from '../../property-runs.ts';

describe('roundForPrint() half away from zero, on the decimal that names the number', () => {
  const cases: [value: number, decimals: number, rounded: number][] = [
    [1.005, 2, 1.01],
    [2.675, 2, 2.68],
    [-2.345, 2, -2.35],
    [0.5, 0, 1],
    [-0.5, 0, -1],
    [1.45, 1, 1.5],
    [8.345, 2, 8.35],
    [-1.5, 0, -2],
    [2.5, 0, 3],
    [0.1 + 0.2, 1, 0.3],
    [123456.785, 2, 123456.79],
    [5e-7, 6, 1e-6],
    [4.9e-7, 6, 0],
    [1e21, 2, 1e21],
    [-1e308, 6, -1e308],
    [1e-21, 12, 0],
    [Number.MAX_SAFE_INTEGER, 0, Number.MAX_SAFE_INTEGER],
  ];
  for (const [value, decimals, rounded] of cases)
    test(`${value} to ${decimals}`, () => expect(roundForPrint(value, decimals)).toBe(rounded));

  test('never gives a negative zero', () => {
    for (const value of [-0, -0.004, -1e-21]) expect(Object.is(roundForPrint(value, 2), 0)).toBe(true);
  });

  test('stays within half a step, is odd, and stays where it is when done again', () => {
    const values = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(values, fc.integer({ min: 0, max: 6 }), (value, decimals) => {
        const rounded = roundForPrint(value, decimals);
        expect(Math.abs(rounded - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + Math.abs(value) * 1e-15);
        expect(roundForPrint(-value, decimals) + rounded).toBe(0);
        expect(roundForPrint(rounded, decimals)).toBe(rounded);
      }),
      RUNS,
    );
  });

  test('refuses what it cannot round', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => roundForPrint(value, 1)).toThrow(RangeError);
    for (const decimals of [-1, 13]) expect(() => roundForPrint(1, decimals)).toThrow(/from 0 to 12/);
  });
});

describe('printNumber()', () => {
  test('prints fixed decimals with a true minus sign and no negative zero', () => {
    expect(printNumber(-12.5, 0)).toBe('\u221213');
    expect(printNumber(3, 2)).toBe('3.00');
    expect(printNumber(-0.04, 1)).toBe('0.0');
  });

  test('groups digits by three from five on, before the decimal sign only', () => {
    expect(printNumber(1234.5678, 4)).toBe('1234.5678');
    expect(printNumber(12345.6, 1)).toBe('12\u00a0345.6');
    expect(printNumber(-1234567, 0)).toBe('\u22121\u00a0234\u00a0567');
  });
});

test('printSigned() shows the sign of every change, and none of a change that prints as zero', () => {
  expect(printSigned(3, 1)).toBe('+3.0');
  expect(printSigned(-3, 1)).toBe('\u22123.0');
  expect([printSigned(0.04, 1), printSigned(-0.04, 1)]).toEqual(['0.0', '0.0']);
});
