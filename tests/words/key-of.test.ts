import { expect, test } from 'vitest';
import { GERMAN } from '../../worker/words/de/catalogue.ts';
import { keyOf } from '../../worker/words/key-of.ts';
import { lexiconFor } from '../../worker/words/lexicons.ts';

test('keyOf() gives every text of the catalogue a key of its own, which needs no quotes', () => {
  const keys = Object.keys(GERMAN).map(keyOf);
  expect(new Set(keys).size).toBe(keys.length);
  expect(keys.filter((key) => !/^[A-Za-z$_][\w$]{5}$/.test(key))).toEqual([]);
});

test('keyOf() spreads texts that differ in one letter', () => {
  const texts = Array.from({ length: 200_000 }, (_, index) => `Item ${index}`);
  expect(new Set(texts.map(keyOf)).size).toBe(texts.length);
});

test('the compiled catalogue says what the catalogue says', () => {
  const { find } = lexiconFor('de');
  expect(Object.entries(GERMAN).filter(([english, german]) => find(english) !== german)).toEqual([]);
  expect(find('a text that nobody wrote')).toBe('a text that nobody wrote');
});
