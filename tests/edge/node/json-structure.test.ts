import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../worker/core/limits.ts';
import { jsonFault } from '../../../worker/edge/http/json-fault.ts';
import { structuralDefects } from '../../../worker/edge/http/json-structure.ts';

const codesOf = (text: string): string[] => structuralDefects(text).map(({ code }) => code);
const keys = (count: number): string => Array.from({ length: count }, (_, i) => `"k${i}":1`).join(',');

describe('structuralDefects()', () => {
  test('counts the keys of each object, and reads no further than they may be', () => {
    expect(codesOf(`{${keys(LIMITS.jsonKeys)}}`)).toEqual([]);
    expect(codesOf(`[{${keys(LIMITS.jsonKeys)}},{${keys(LIMITS.jsonKeys)}}]`)).toEqual([]);
    const twice = `"z":1,"z":1`;
    expect(structuralDefects(`{"a":[0,{${keys(LIMITS.jsonKeys + 1)},${twice}}]}`)).toMatchObject([
      { code: 'JSON_KEYS_TOO_MANY', pointer: '/a/1' },
    ]);
  });

  test('is not deceived by a bracket that closes another', () => {
    const deep = '['.repeat(LIMITS.jsonDepth + 1);
    expect(codesOf(deep)).toEqual(['JSON_TOO_DEEP']);
    // What follows is no JSON: a key that is there twice is none.
    expect(codesOf(`[}{"a":1,"a":1}${deep}`)).toEqual([]);
    expect(codesOf(`{]{"a":1,"a":1}`)).toEqual([]);
    expect(codesOf('}')).toEqual([]);
  });
});

describe('jsonFault() stops at the first fault', () => {
  test.each([
    ['[},', 2],
    ['{],', 2],
    ['[,', 2],
    ['{"a"{', 5],
    ['[1 [', 4],
  ])('%s, over and over', (piece, column) => {
    expect(jsonFault(piece.repeat(50_000)).at).toEqual({ line: 1, column });
  });
});
