import { constants, deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inflated } from '../../../../worker/core/print/bytes/inflate.ts';
import { budgetOf } from '../budget-of.ts';

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
      expect(Buffer.from(inflated(packed, budgetOf({}))).equals(plain)).toBe(true);
    }),
  );
});

test('inflated() charges what comes out, and stops at the bound', () => {
  const packed = deflateSync(Buffer.alloc(3_000_000));
  const wide = budgetOf({});
  inflated(packed, wide);
  expect(wide.spent.unpackedBytes).toBe(3_000_000);
  const narrow = budgetOf({ unpackedBytes: 1_000_000 });
  expect(() => inflated(packed, narrow)).toThrow('it unpacks to more than 1 MB');
  expect(narrow.spent.unpackedBytes).toBeLessThanOrEqual(1_000_000 + 65_536);
});

test('inflated() refuses data that end early or are none', () => {
  const packed = deflateSync(Buffer.from('The data of a page, and more of them, and more of them.'));
  for (let end = 0; end < packed.length - 5; end++) {
    expect(() => inflated(packed.subarray(0, end), budgetOf({}))).toThrow(/early|valid/);
  }
  expect(() => inflated(Buffer.from('x\u009cnonsense', 'latin1'), budgetOf({}))).toThrow();
});
