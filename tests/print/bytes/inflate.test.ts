import { constants, deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inflate, inflated } from '../../../worker/print/bytes/inflate.ts';

const UNBOUNDED = 1e9;

test('inflated() undoes what zlib packs, by every strategy', () => {
  const runs = fc.array(fc.tuple(fc.uint8Array({ maxLength: 40 }), fc.integer({ min: 1, max: 3000 })), {
    maxLength: 20,
  });
  const strategy = fc.constantFrom(
    constants.Z_DEFAULT_STRATEGY,
    constants.Z_FIXED,
    constants.Z_HUFFMAN_ONLY,
    constants.Z_RLE,
  );
  fc.assert(
    fc.property(runs, strategy, fc.integer({ min: 0, max: 9 }), (parts, by, level) => {
      const plain = Buffer.concat(parts.flatMap(([bytes, times]) => Array.from({ length: times }, () => bytes)));
      const packed = deflateSync(plain, { strategy: by, level });
      expect(Buffer.from(inflated(packed, UNBOUNDED)).equals(plain)).toBe(true);
    }),
  );
});

test('inflate() stops at the bound', () => {
  const packed = deflateSync(Buffer.alloc(3_000_000));
  let most = 0;
  expect(() => inflate(packed, 1_000_000, (piece) => (most += piece.length))).toThrow('more than it may');
  expect(most).toBeLessThanOrEqual(1_000_000);
});

test('inflated() refuses data that end early or are none', () => {
  const packed = deflateSync(Buffer.from('The data of a page, and more of them, and more of them.'));
  for (let end = 0; end < packed.length - 5; end++) {
    expect(() => inflated(packed.subarray(0, end), UNBOUNDED)).toThrow(/early|valid/);
  }
  expect(() => inflated(Buffer.from('x\u009cnonsense', 'latin1'), UNBOUNDED)).toThrow();
});
