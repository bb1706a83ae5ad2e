import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson } from '../../worker/pack/canonical-json.ts';
import { RUNS } from '../property-runs.ts';

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

const values = fc.jsonValue({ maxDepth: 4 });

describe('canonicalJson()', () => {
  test('is the same for every order of keys', () => {
    fc.assert(
      fc.property(values, (value) => {
        expect(canonicalJson(reversed(value))).toBe(canonicalJson(value));
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test('reads back as the value, and is its own canonical form', () => {
    fc.assert(
      fc.property(values, (value) => {
        const text = canonicalJson(value);
        expect(JSON.stringify(JSON.parse(text)).length).toBe(text.length);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test('sorts by UTF-16 code unit and writes numbers as ECMAScript does', () => {
    expect(canonicalJson({ '\u20ac': 1, '\r': 2, '\ufb33': 3, '1': 4, '\u{1f600}': 5, '\u0080': 6, ö: 7 })).toBe(
      '{"\\r":2,"1":4,"\u0080":6,"ö":7,"\u20ac":1,"\u{1f600}":5,"\ufb33":3}',
    );
    // The numbers of RFC 8785, section 3.2.2.
    const numbers: unknown = JSON.parse('[333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001, -0]');
    expect(canonicalJson(numbers)).toBe('[333333333.3333333,1e+30,4.5,0.002,1e-27,0]');
  });

  test('leaves out what is undefined, and refuses what JSON cannot carry', () => {
    expect(canonicalJson({ a: undefined, b: null })).toBe('{"b":null}');
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, undefined, () => 1])
      expect(() => canonicalJson(value)).toThrow(TypeError);
    expect(() => canonicalJson({ a: [Number.NaN] })).toThrow(TypeError);
  });
});
