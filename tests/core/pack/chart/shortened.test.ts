import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shortened } from '../../../../worker/core/pack/chart/shortened.ts';
import { textWidthPt } from '../../../../worker/core/print/fonts/face.ts';
import { PRINTABLE_RANGES, PRINTABLE_SIGNS } from '../../../../worker/core/text/printable.ts';
import { RUNS } from '../../../property-runs.ts';

const SIGNS = [
  ...PRINTABLE_RANGES.flatMap(([from, to]) =>
    Array.from({ length: to - from + 1 }, (_, index) => String.fromCodePoint(from + index)),
  ),
  ...PRINTABLE_SIGNS,
];

describe('shortened()', () => {
  test('fits in the faces of the pack, whatever the name', () => {
    const names = fc.array(fc.constantFrom(...SIGNS), { maxLength: 60 }).map((signs) => signs.join(''));
    fc.assert(
      fc.property(names, fc.integer({ min: 3, max: 20 }), (name, roomEm) => {
        expect(textWidthPt(shortened(name, roomEm), 'regular', 1)).toBeLessThanOrEqual(roomEm);
      }),
      { ...RUNS, numRuns: 500 },
    );
  });

  test('leaves a name alone that fits, and marks one that it cuts', () => {
    expect(shortened('Oil pressure', 15)).toBe('Oil pressure');
    expect(shortened('Cylinder head temperature of the right rear cylinder', 15)).toMatch(/^Cylinder head.*…$/);
  });
});
