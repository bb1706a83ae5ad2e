import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { columnWidthsPt } from '../../../../worker/core/print/measure/column-widths.ts';

const cell = (column: number, minPt: number, maxPt: number, span = 1) => ({ column, span, minPt, maxPt });
const total = (widthsPt: readonly number[]): number => widthsPt.reduce((sum, each) => sum + each, 0);

describe('columnWidthsPt()', () => {
  test('gives every column its longest line where there is room', () => {
    expect(columnWidthsPt(2, [cell(0, 10, 50), cell(1, 10, 80)], 500, [])).toEqual([50, 80]);
  });

  test('lets elastic columns alone take up what is left', () => {
    expect(columnWidthsPt(2, [cell(0, 10, 50), cell(1, 10, 80)], 200, [true, false])).toEqual([120, 80]);
  });

  test('divides long content before short', () => {
    const [short, long] = columnWidthsPt(2, [cell(0, 20, 60), cell(1, 40, 900)], 300, []);
    expect(short).toBe(60);
    expect(long).toBe(240);
  });

  test('cuts the widest columns when even the words do not fit', () => {
    const words = [cell(0, 10, 10), cell(1, 400, 400), cell(2, 300, 300), cell(3, 90, 90)];
    expect(columnWidthsPt(4, words, 220, [])).toEqual([10, 70, 70, 70]);
  });

  test('divides one over-long word rather than squeeze the other columns', () => {
    const [, prose] = columnWidthsPt(2, [cell(0, 700, 700), cell(1, 60, 900)], 400, []);
    expect(prose).toBeGreaterThan(160);
  });

  test('shares what a spanning cell asks among its columns', () => {
    expect(columnWidthsPt(2, [cell(0, 10, 10), cell(1, 10, 10), cell(0, 100, 100, 2)], 500, [])).toEqual([50, 50]);
  });

  test('never exceeds what is available', () => {
    const cells = fc.array(
      fc.record({ column: fc.nat(5), span: fc.constant(1), minPt: fc.nat(400), maxPt: fc.nat(2000) }),
      { minLength: 1 },
    );
    fc.assert(
      fc.property(cells, fc.integer({ min: 50, max: 600 }), (given, availablePt) => {
        expect(total(columnWidthsPt(6, given, availablePt, []))).toBeLessThanOrEqual(availablePt + 1e-6);
      }),
    );
  });
});
