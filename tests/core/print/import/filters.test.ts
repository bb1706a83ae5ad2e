import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withoutPredictor } from '../../../../worker/core/print/bytes/predictor.ts';
import { fromAscii85, fromAsciiHex } from '../../../../worker/core/print/import/ascii-filters.ts';
import { fromLzw, fromRunLength } from '../../../../worker/core/print/import/run-filters.ts';
import { budgetOf } from '../budget-of.ts';

/** Bytes with runs, which packers are made for. */
const bytes = fc
  .array(fc.tuple(fc.uint8Array({ maxLength: 30 }), fc.integer({ min: 1, max: 900 })), { maxLength: 12 })
  .map((parts) => Buffer.concat(parts.flatMap(([piece, times]) => Array.from({ length: times }, () => piece))));

/** Packs as ISO 32000-1, 7.4.4.2 describes it, by a table of strings; the reader keeps no strings. */
function lzwOf(plain: Uint8Array, early: number): Uint8Array {
  let bits = '';
  let table = new Map<string, number>();
  let [width, next] = [9, 258];
  const put = (code: number): void => {
    bits += code.toString(2).padStart(width, '0');
  };
  const codeOf = (text: string): number => (text.length === 1 ? text.charCodeAt(0) : (table.get(text) ?? -1));
  put(256);
  let current = '';
  for (const byte of plain) {
    const longer = current + String.fromCharCode(byte);
    if (current === '' || codeOf(longer) >= 0) {
      current = longer;
      continue;
    }
    put(codeOf(current));
    table.set(longer, next++);
    // The reader is one entry behind.
    if (next - 1 + early >= 2 ** width && width < 12) width += 1;
    if (next === 4096) {
      put(256);
      table = new Map();
      [width, next] = [9, 258];
    }
    current = String.fromCharCode(byte);
  }
  if (current !== '') put(codeOf(current));
  next += 1;
  if (next - 1 + early >= 2 ** width && width < 12) width += 1;
  put(257);
  return Uint8Array.from(bits.match(/.{1,8}/g) ?? [], (each) => Number.parseInt(each.padEnd(8, '0'), 2));
}

function runsOf(plain: Uint8Array): Uint8Array {
  const out: number[] = [];
  for (let at = 0; at < plain.length; ) {
    let run = 1;
    while (run < 128 && plain[at + run] === plain[at]) run++;
    if (run > 1) out.push(257 - run, plain[at] ?? 0);
    else out.push(0, plain[at] ?? 0);
    at += run;
  }
  return Uint8Array.from([...out, 128, 1, 2, 3]);
}

function ascii85Of(plain: Uint8Array): Uint8Array {
  let text = '';
  for (let at = 0; at < plain.length; at += 4) {
    const group = Buffer.alloc(4);
    Buffer.from(plain.subarray(at, at + 4)).copy(group);
    let value = group.readUInt32BE(0);
    const digits = Array.from({ length: 5 }, () => {
      const digit = value % 85;
      value = Math.floor(value / 85);
      return String.fromCharCode(digit + 0x21);
    }).reverse();
    const length = Math.min(4, plain.length - at);
    text += length === 4 && group.readUInt32BE(0) === 0 ? 'z' : digits.slice(0, length + 1).join('');
    if (at % 48 === 0) text += '\n';
  }
  return Buffer.from(`${text}~>rest`);
}

describe('filters undo what packers do', () => {
  test('LZWDecode, changing early and late', () => {
    fc.assert(
      fc.property(bytes, fc.constantFrom(0, 1), (plain, early) => {
        expect(Buffer.from(fromLzw(lzwOf(plain, early), early, budgetOf({}))).equals(plain)).toBe(true);
      }),
    );
  });

  test('RunLengthDecode', () => {
    fc.assert(
      fc.property(bytes, (plain) => {
        expect(Buffer.from(fromRunLength(runsOf(plain), budgetOf({}))).equals(plain)).toBe(true);
      }),
    );
  });

  test('ASCII85Decode', () => {
    fc.assert(
      fc.property(bytes, (plain) => {
        expect(Buffer.from(fromAscii85(ascii85Of(plain), budgetOf({}))).equals(plain)).toBe(true);
      }),
    );
  });

  test('ASCIIHexDecode, with blanks, in either case, and half a byte at the end', () => {
    fc.assert(
      fc.property(bytes, fc.boolean(), (plain, isUpper) => {
        const hex = plain.toString('hex').replace(/.{30}/g, '$& \n');
        const text = isUpper ? hex.toUpperCase() : hex;
        expect(Buffer.from(fromAsciiHex(Buffer.from(`${text}>00`), budgetOf({}))).equals(plain)).toBe(true);
      }),
    );
    expect([...fromAsciiHex(Buffer.from('4a5'), budgetOf({}))]).toEqual([0x4a, 0x50]);
  });

  test('predictors row by row', () => {
    // Up: each row is the difference from the one above.
    const rows = Uint8Array.of(2, 1, 2, 3, 2, 1, 1, 1, 0, 9, 9, 9);
    expect([...withoutPredictor(rows, 3, 8)]).toEqual([1, 2, 3, 2, 3, 4, 9, 9, 9]);
  });
});

describe('filters stop at the bound, before they have filled memory', () => {
  const zeros = Buffer.alloc(1_000_000);
  test.each([
    ['LZWDecode', () => fromLzw(lzwOf(zeros, 1), 1, budgetOf({ unpackedBytes: 100_000 }))],
    ['RunLengthDecode', () => fromRunLength(runsOf(zeros), budgetOf({ unpackedBytes: 100_000 }))],
    ['ASCII85Decode', () => fromAscii85(Buffer.alloc(300_000, 'z'), budgetOf({ unpackedBytes: 1_000_000 }))],
    ['ASCIIHexDecode, of blanks', () => fromAsciiHex(Buffer.alloc(300_000, ' '), budgetOf({ unpackedBytes: 100_000 }))],
  ])('%s', (_, undo) => {
    expect(undo).toThrow('it unpacks to more than');
  });

  test.each([
    ['a code that is not known yet', () => fromLzw(Uint8Array.of(0x80, 0x50, 0x7f), 1, budgetOf({}))],
    ['a code before any', () => fromLzw(Uint8Array.of(0xff, 0xff), 1, budgetOf({}))],
    ['a character that is none', () => fromAscii85(Buffer.from('ab\u007fcd'), budgetOf({}))],
  ])('and refuse %s', (_, undo) => {
    expect(undo).toThrow(/valid|understood/);
  });

  test('a stream by several filters is charged for each', () => {
    const budget = budgetOf({});
    fromAsciiHex(Buffer.from(`${deflateSync(zeros).toString('hex')}>`), budget);
    expect(budget.spent.unpackedBytes).toBe(3 * deflateSync(zeros).length);
  });
});
