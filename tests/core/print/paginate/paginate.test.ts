import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heightOf } from '../../../../worker/core/print/measure/stack.ts';
import { BREAK, type Break, type Strip, strip } from '../../../../worker/core/print/measure/strip.ts';
import { paginate } from '../../../../worker/core/print/paginate/paginate.ts';

const line = (heightPt: number, breakBefore: Break = BREAK.free, more: Partial<Strip> = {}): Strip =>
  strip({ heightPt, items: [], breakBefore, ...more });

const counts = (strips: readonly Strip[], bodyPt: number): number[] =>
  paginate(strips, bodyPt).map((page) => page.strips.length);

describe('paginate()', () => {
  test('fills pages in order', () => {
    expect(counts([line(40), line(40), line(40)], 100)).toEqual([2, 1]);
  });

  test('drops the gap at the head of a page and keeps it elsewhere', () => {
    expect(counts([line(50), line(50, BREAK.free, { abovePt: 1 }), line(49)], 100)).toEqual([1, 2]);
  });

  test('takes a heading along to what it heads', () => {
    expect(counts([line(40), line(40), line(20), line(40, BREAK.orphan)], 100)).toEqual([2, 2]);
  });

  test('would rather part a kept section than a heading from its text', () => {
    const strips = [line(30), line(30, BREAK.inKeptSection), line(30, BREAK.orphan), line(30, BREAK.orphan)];
    expect(counts(strips, 100)).toEqual([1, 3]);
  });

  test('breaks at the last place when all are alike', () => {
    expect(counts([line(30), line(30, BREAK.never), line(30, BREAK.never), line(30, BREAK.never)], 100)).toEqual([
      3, 1,
    ]);
  });

  test('repeats the head of a table that runs on', () => {
    const repeat = line(20);
    const rows = Array.from({ length: 6 }, () => line(30, BREAK.free, { repeat }));
    const pages = paginate([line(20), ...rows], 100);
    expect(pages.map((page) => page.strips[0]?.heightPt)).toEqual([20, 20, 20]);
    expect(pages.map((page) => page.strips.length)).toEqual([3, 3, 3]);
  });

  test('names a strip that is longer than a page and goes on', () => {
    const pages = paginate([line(10), line(200, BREAK.free, { overflows: 'Cut-out' }), line(10)], 100);
    expect(pages.map((page) => page.overflows)).toEqual([null, 'Cut-out', null]);
  });

  test('never fills a page beyond its height and loses no strip', () => {
    const strips = fc.array(
      fc.record({
        heightPt: fc.integer({ min: 1, max: 100 }),
        gapPt: fc.nat(30),
        breakBefore: fc.constantFrom(...Object.values(BREAK)),
      }),
      { maxLength: 80 },
    );
    fc.assert(
      fc.property(strips, (given) => {
        const made = given.map(({ heightPt, gapPt, breakBefore }) => line(heightPt, breakBefore, { abovePt: gapPt }));
        const pages = paginate(made, 100);
        expect(pages.flatMap((page) => page.strips)).toEqual(made);
        expect(pages.every((page) => heightOf(page.strips) <= 100.01)).toBe(true);
      }),
    );
  });
});
