import { describe, expect, test } from 'vitest';
import { wantedRange } from '../../../worker/edge/http/byte-range.ts';

const part = (offset: number, length: number) => ({ kind: 'part', range: { offset, length } });

describe('wantedRange() of 100 bytes', () => {
  test.each([
    ['bytes=0-9', part(0, 10)],
    ['bytes=90-', part(90, 10)],
    ['bytes=90-500', part(90, 10)],
    ['bytes=-5', part(95, 5)],
    ['bytes=-500', part(0, 100)],
    ['bytes=99-99', part(99, 1)],
    ['bytes=100-', { kind: 'none' }],
    ['bytes=-0', { kind: 'none' }],
    ['bytes=9-0', { kind: 'whole' }],
    ['bytes=0-1,5-6', { kind: 'whole' }],
    ['bytes=-', { kind: 'whole' }],
    ['items=0-1', { kind: 'whole' }],
    [null, { kind: 'whole' }],
  ])('for %j', (header, wanted) => {
    expect(wantedRange(header, 100)).toEqual(wanted);
  });
});
