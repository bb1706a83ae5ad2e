import { describe, expect, test } from 'vitest';
import { BREAK, type Strip, strip } from '../../../../worker/core/print/measure/strip.ts';
import { paginateClosedUp } from '../../../../worker/core/print/paginate/closed-up.ts';

const block = (heightPt: number, belowPt = 10): Strip =>
  strip({ heightPt, items: [], breakBefore: BREAK.free, belowPt });

const counts = (strips: readonly Strip[]): number[] => paginateClosedUp(strips, 1000).map((page) => page.strips.length);

describe('paginateClosedUp()', () => {
  test('takes in a last line by closing up the spaces', () => {
    const strips = [...Array.from({ length: 10 }, () => block(90, 11)), block(8)];
    expect(counts(strips)).toEqual([11]);
  });

  test('leaves spaces as they are where that does not help', () => {
    const strips = [...Array.from({ length: 10 }, () => block(99, 1)), block(20)];
    const pages = paginateClosedUp(strips, 1000);
    expect(pages.map((page) => page.strips.length)).toEqual([10, 1]);
    expect(pages[0]?.strips[0]?.belowPt).toBe(1);
  });

  test('leaves a last page alone that holds enough', () => {
    const strips = [...Array.from({ length: 10 }, () => block(90, 11)), block(170)];
    const pages = paginateClosedUp(strips, 1000);
    expect(pages.map((page) => page.strips.length)).toEqual([10, 1]);
    expect(pages[0]?.strips[0]?.belowPt).toBe(11);
  });
});
