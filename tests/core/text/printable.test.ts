import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  codePointName,
  normaliseText,
  PRINTABLE_SIGNS,
  printableLineOf,
  unprintableIn,
} from '../../../worker/core/text/printable.ts';
import { RUNS } from '../../property-runs.ts';

describe('normaliseText()', () => {
  test('composes, and gives look-alikes one spelling', () => {
    expect(normaliseText('10\u00b5F 5\u2126 \u2206m')).toBe('10\u03bcF 5\u03a9 \u0394m');
    expect(normaliseText('Mu\u0308ller')).toBe('M\u00fcller');
    expect(normaliseText('soft\u00adhy\u200bphen\ufeff\r')).toBe('softhyphen');
    expect(normaliseText('no\u2011break, thin\u2009space')).toBe('no\u2010break, thin\u00a0space');
  });

  test('stays where it is when done again', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const once = normaliseText(text);
        expect(normaliseText(once)).toBe(once);
      }),
      RUNS,
    );
  });
});

test('codePointName() names a character as Unicode does', () => {
  expect(['\u001b', 'A', '\u{1F600}'].map(codePointName)).toEqual(['U+001B', 'U+0041', 'U+1F600']);
});

describe('printableLineOf()', () => {
  test.each([
    ['Nord \u{1f6e9}\nHangar', 'Nord Hangar'],
    ['a\u001b[2Jb', 'a [2Jb'],
    ['\u65e5\u672c\u5de5\u623f', ''],
    ['\u{1f6e9} -', ''],
    ['Fjällräven & Söhne', 'Fjällräven & Söhne'],
  ])('%j', (text, printed) => {
    expect(printableLineOf(text)).toBe(printed);
  });
});

describe('unprintableIn()', () => {
  test('passes the signs of engineering and the languages of Europe', () => {
    expect(unprintableIn(`${PRINTABLE_SIGNS} ° ± ² ³ ½ € § № “ ” – — … ő Ł ș Þ ß 2\u202f000\n`)).toEqual([]);
  });

  test('names what cannot be printed once each, in order, outside the basic plane too', () => {
    expect(unprintableIn('Tank \u{1F600} \u4e2d \u{1F600}')).toEqual(['\u{1F600}', '\u4e2d']);
    expect(unprintableIn('bell \u0007')).toEqual(['\u0007']);
    expect(unprintableIn('\u202eturned')).toEqual(['\u202e']);
  });
});
