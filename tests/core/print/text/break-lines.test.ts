import fc from 'fast-check';
import { expect, test } from 'vitest';
import { BODY } from '../../../../worker/core/print/style/text-style.ts';
import { breakLines, contentWidthsPt } from '../../../../worker/core/print/text/break-lines.ts';
import { wordsOf } from '../../../../worker/core/print/text/words.ts';

const wordsIn = (text: string, style = BODY) => wordsOf([{ text, style, tag: null, link: null, pageOf: null }]);
const linesOf = (text: string, columnPt: number): string[] =>
  breakLines(wordsIn(text), columnPt).map((line) => line.pieces.map((piece) => piece.text).join(''));

test('breakLines() breaks at spaces and keeps the space at the end of the line', () => {
  expect(linesOf('one two three', 40)).toEqual(['one two ', 'three']);
});

test('breakLines() breaks after a hyphen or slash between words', () => {
  expect(linesOf('cross-country and/or', 40)).toEqual(['cross-', 'country ', 'and/or']);
});

test('breakLines() keeps dates, ranges and part numbers whole while they fit', () => {
  expect(linesOf('on 2026-03-14', 55)).toEqual(['on ', '2026-03-14']);
  expect(linesOf('from Q-SLM-P3', 48)).toEqual(['from ', 'Q-SLM-P3']);
});

test('breakLines() divides an over-long word, at a hyphen by preference', () => {
  expect(linesOf('ABCDEFG-HIJKLMNOP', 60)[0]).toBe('ABCDEFG-');
});

test('breakLines() breaks where it is forced to', () => {
  expect(linesOf('one\ntwo', 400)).toEqual(['one\ntwo']);
  const runs = ['one', '\n', '\n', 'two'].map((text) => ({ text, style: BODY, tag: null, link: null, pageOf: null }));
  expect(breakLines(wordsOf(runs), 400).map((line) => line.pieces.map((piece) => piece.text).join(''))).toEqual([
    'one',
    '',
    'two',
  ]);
});

test('breakLines() never sets a line wider than the column and loses no letter', () => {
  const text = fc.array(fc.string({ unit: fc.constantFrom(...'abcMW-/.iŁΩ12'), minLength: 1, maxLength: 60 }), {
    maxLength: 30,
  });
  fc.assert(
    fc.property(text, fc.integer({ min: 12, max: 300 }), (parts, columnPt) => {
      const source = parts.join(' ');
      const lines = breakLines(wordsIn(source), columnPt);
      expect(Math.max(0, ...lines.map((line) => line.widthPt))).toBeLessThanOrEqual(columnPt + 0.02);
      const printed = lines.flatMap((line) => line.pieces.map((piece) => piece.text)).join('');
      expect(printed.replaceAll(' ', '')).toBe(source.replaceAll(' ', ''));
    }),
  );
});

test('contentWidthsPt() is the longest word and the longest line', () => {
  const { minPt, maxPt } = contentWidthsPt(wordsIn('a longer word'));
  expect(linesOf('a longer word', maxPt)).toHaveLength(1);
  expect(linesOf('a longer word', maxPt - 0.1)).toHaveLength(2);
  expect(linesOf('a longer word', minPt)).toEqual(['a ', 'longer ', 'word']);
});
