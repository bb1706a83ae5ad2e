import { describe, expect, test } from 'vitest';
import { compileMessage } from '../../../worker/core/text/build/compile-message.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import type { Language } from '../../../worker/core/text/languages.ts';
import { localeOf } from '../../../worker/core/text/locale.ts';
import type { Form, Value } from '../../../worker/core/text/message.ts';

const UNITS = { mass: 'kg', arm: 'mm', volume: 'l' } as const;

/** The text of a message as the build compiles it, in a language. */
function textOf(message: string, values: Record<string, Value>, language: Language = 'en'): string {
  const { code } = compileMessage(message, ['one', 'other']);
  const form = new Function(`return ${code}`)() as Form<never>;
  const printer = formatterFor(UNITS, localeOf(language));
  return printer.value({ message: [form, form], values });
}

describe('compileMessage()', () => {
  test('fills values in, in any order', () => {
    expect(textOf('{b} before {a}', { a: 'A', b: 'B' })).toBe('B before A');
  });

  test('writes numbers as the language has them', () => {
    expect(textOf('{a} h', { a: 13.5 }, 'de')).toBe('13,5 h');
  });

  test('chooses the form of a plural, and an exact number first', () => {
    const message = '{n, plural, =0 {no pages} one {# page} other {# pages}} of {of}';
    expect([0, 1, 2, 1.5].map((n) => textOf(message, { n, of: 'A' }))).toEqual([
      'no pages of A',
      '1 page of A',
      '2 pages of A',
      '1.5 pages of A',
    ]);
  });

  test('chooses by a word', () => {
    const message = '{side, select, forward {too far forward} other {too far aft}}';
    expect(['forward', 'aft'].map((side) => textOf(message, { side }))).toEqual(['too far forward', 'too far aft']);
  });

  test('quotes braces as ICU MessageFormat has it, and leaves apostrophes alone', () => {
    expect(textOf("'{'a'}' and the owner's {a}", { a: 'A' })).toBe("{a} and the owner's A");
  });

  test('gives the type of each value', () => {
    const { values } = compileMessage('{n, plural, one {a {a}} other {#}} {s, select, x {1} y {2} other {3}}', [
      'one',
      'other',
    ]);
    expect([...values]).toEqual([
      ['n', 'number'],
      ['a', 'Value'],
      ['s', '"x" | "y" | (string & {})'],
    ]);
  });

  test.each([
    ['{n, plural, other {#}}', /lacks one/],
    ['{n, number}', /number is not used here|formatter/i],
    ['{n, selectordinal, one {#st} other {#th}}', /selectordinal/],
    ['{n', /./],
  ])('refuses %s', (message, why) => expect(() => compileMessage(message, ['one', 'other'])).toThrow(why));
});
