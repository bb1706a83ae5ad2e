import { describe, expect, test } from 'vitest';
import { paperOf, pointsFromMm, textArea } from '../../../worker/core/print/paper.ts';
import { PAPER_NAMES } from '../../../worker/core/units/paper-size.ts';

describe('the text area of a sheet', () => {
  test.each(PAPER_NAMES)('%s breaks lines alike', (name) => {
    expect(paperOf(name).columnPt).toBeCloseTo(pointsFromMm(174), 9);
  });

  // ISO 216: A5 is 148 × 210 mm.
  test('is narrower on a sheet that is too narrow for it, within margins that printers reach', () => {
    const { leftPt, columnPt, widthPt } = textArea({ widthPt: pointsFromMm(148), heightPt: pointsFromMm(210) });
    expect(leftPt).toBeCloseTo(pointsFromMm(12), 9);
    expect(leftPt + columnPt).toBeCloseTo(widthPt - pointsFromMm(12), 9);
  });

  test.each([
    ['narrower', { widthPt: pointsFromMm(24), heightPt: pointsFromMm(297) }],
    ['shorter', { widthPt: pointsFromMm(210), heightPt: pointsFromMm(45) }],
  ])('a sheet %s than its margins is refused', (_, size) => {
    expect(() => textArea(size)).toThrow('the sheet must be larger than its margins');
  });
});
