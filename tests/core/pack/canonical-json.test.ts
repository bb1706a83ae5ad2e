import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import canonicalize from 'canonicalize';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson } from '../../../worker/core/pack/canonical-json.ts';
import { RUNS } from '../../property-runs.ts';

/** The same value with the keys of every object in the opposite order. */
function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, member]) => [key, reversed(member)]),
  );
}

const values = fc.jsonValue({ maxDepth: 4, stringUnit: 'binary' });

const hexOf = (text: string): string => Buffer.from(text).toString('hex');

/** The number of an IEEE 754 bit pattern, in hexadecimal. */
const numberOf = (bits: string): number => Buffer.from(bits, 'hex').readDoubleBE();

describe('canonicalJson() gives the test vectors of RFC 8785', () => {
  const SAMPLE = String.raw`{
    "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
    "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
    "literals": [null, true, false]
  }`;

  test('3.2.2 and 3.2.3: the sample object, its primitives serialised and its properties sorted', () => {
    expect(canonicalJson(JSON.parse(SAMPLE))).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  test('3.2.4: its bytes in UTF-8', () => {
    expect(hexOf(canonicalJson(JSON.parse(SAMPLE)))).toBe(
      `7b 22 6c 69 74 65 72 61 6c 73 22 3a 5b 6e 75 6c 6c 2c 74 72 75 65 2c 66 61 6c 73 65 5d 2c 22
       6e 75 6d 62 65 72 73 22 3a 5b 33 33 33 33 33 33 33 33 33 2e 33 33 33 33 33 33 33 2c 31 65 2b
       33 30 2c 34 2e 35 2c 30 2e 30 30 32 2c 31 65 2d 32 37 5d 2c 22 73 74 72 69 6e 67 22 3a 22 e2
       82 ac 24 5c 75 30 30 30 66 5c 6e 41 27 42 5c 22 5c 5c 5c 5c 5c 22 2f 22 7d`.replaceAll(/\s+/g, ''),
    );
  });

  test('3.2.3: properties sorted by UTF-16 code unit', () => {
    const sorted = canonicalJson({
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\u{1f600}': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    });
    expect([...sorted.matchAll(/:"([^"]+)"/g)].map(([, name]) => name)).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  test.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('appendix B: the number %s', (bits, text) => {
    expect(canonicalJson(numberOf(bits))).toBe(text);
  });

  test.each(['7fffffffffffffff', '7ff0000000000000', 'fff0000000000000'])('appendix B: no number, %s', (bits) => {
    expect(() => canonicalJson(numberOf(bits))).toThrow(TypeError);
    expect(() => canonicalJson({ a: [numberOf(bits)] })).toThrow(TypeError);
  });
});

describe('canonicalJson()', () => {
  test('gives what the package canonicalize gives, for every order of keys', () => {
    fc.assert(
      fc.property(values, (value) => {
        const text = canonicalJson(value);
        expect(text).toBe(canonicalize(value));
        expect(canonicalJson(reversed(value))).toBe(text);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
      }),
      { ...RUNS, numRuns: 1000 },
    );
  });

  test.each(['first-edition', 'second-edition'])(
    'gives the records and manifests that were sealed in the %s',
    (edition) => {
      const packs = join(
        import.meta.dirname,
        '../../../fixtures/kept',
        edition,
        'export/aircraft/Q-DEU/packs/Q-DEU-P1-1',
      );
      for (const name of ['record.json', 'manifest.json']) {
        const sealed = readFileSync(join(packs, name), 'utf8');
        expect(canonicalJson(JSON.parse(sealed))).toBe(sealed);
      }
    },
  );

  test('leaves out what is undefined, and refuses what JSON cannot carry', () => {
    expect(canonicalJson({ a: undefined, b: null })).toBe('{"b":null}');
    for (const value of [undefined, () => 1, [undefined]]) expect(() => canonicalJson(value)).toThrow(TypeError);
  });

  // The RFC refuses it (3.2.2.2); a record that holds one has to be digested before the gate says so.
  test('writes half a surrogate pair as its escape', () => {
    expect(canonicalJson(['\ud800'])).toBe(String.raw`["\ud800"]`);
  });
});
