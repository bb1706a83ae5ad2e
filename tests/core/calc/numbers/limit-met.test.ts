import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isAtLeast, isAtMost } from '../../../../worker/core/calc/numbers/limit-met.ts';
import { RUNS } from '../../../property-runs.ts';

/** Decimal figures as people write them, with the whole number of tenths that they are. */
const tenths = fc.integer({ min: 0, max: 200_000 });

describe('a limit', () => {
  test('of decimal tenths that a sum of tenths meets exactly is met from both sides', () => {
    fc.assert(
      fc.property(fc.array(tenths, { minLength: 1, maxLength: 12 }), (parts) => {
        const sum = parts.reduce((total, part) => total + part / 10, 0);
        const limit = parts.reduce((total, part) => total + part, 0) / 10;
        expect([isAtMost(sum, limit), isAtLeast(sum, limit)]).toEqual([true, true]);
      }),
      RUNS,
    );
  });

  test('that a sum of tenths misses by one hundredth is not met', () => {
    fc.assert(
      fc.property(fc.array(tenths, { minLength: 1, maxLength: 12 }), (parts) => {
        const sum = parts.reduce((total, part) => total + part / 10, 0);
        const limit = parts.reduce((total, part) => total + part, 0) / 10;
        expect([isAtMost(sum + 0.01, limit), isAtLeast(sum - 0.01, limit)]).toEqual([false, false]);
      }),
      RUNS,
    );
  });

  test('is met by no number that is none, and an infinite one by every number', () => {
    expect([isAtMost(Number.NaN, 1), isAtLeast(Number.NaN, 1)]).toEqual([false, false]);
    expect([isAtMost(1e9, Number.POSITIVE_INFINITY), isAtLeast(-1e9, Number.NEGATIVE_INFINITY)]).toEqual([true, true]);
    expect(isAtMost(Number.POSITIVE_INFINITY, 1)).toBe(false);
  });
});
