import { describe, expect, test } from 'vitest';
import { limited, limitedDifference } from '../../../../worker/core/calc/surveillance/limited.ts';

describe('limited()', () => {
  test('both ends are within, and what lies beyond is not', () => {
    const isWithin = (value: number) => limited('output-power', value, 'dBW', { least: 18.5, most: 27 }).isWithin;
    expect([18.49, 18.5, 27, 27.01].map(isWithin)).toEqual([false, true, true, false]);
  });
});

describe('limitedDifference()', () => {
  test('a difference of decimals that is the tolerance is within', () => {
    expect(limitedDifference('sensitivity', { read: -72.9, against: -73.9 }, 'dB', 1).isWithin).toBe(true);
    for (let tenths = -800; tenths < -600; tenths += 1) {
      const terms = { read: tenths / 10, against: (tenths - 10) / 10 };
      expect(limitedDifference('sensitivity', terms, 'dB', 1).isWithin, JSON.stringify(terms)).toBe(true);
      const beyond = { read: tenths / 10, against: (tenths - 11) / 10 };
      expect(limitedDifference('sensitivity', beyond, 'dB', 1).isWithin, JSON.stringify(beyond)).toBe(false);
    }
  });
});
