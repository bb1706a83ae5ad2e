import { expect, test } from 'vitest';
import { glyphText, number, textString } from '../../../worker/print/draw/pdf-text.ts';

test('number() writes hundredths, no exponent and no negative zero', () => {
  expect([0.004, -0.001, 12.345, 1e-9, 841.89].map(number)).toEqual(['0', '0', '12.35', '0', '841.89']);
});

test('glyphText() escapes what would end the string', () => {
  expect(glyphText('(a)\\')).toBe('(\0\\(\0a\0\\)\0\\\\)');
  // U+0128 and U+010D hold a parenthesis and a carriage return in their low bytes.
  expect(glyphText('\u0128\u010d')).toBe('(\u0001\\(\u0001\\r)');
});

test('textString() writes UTF-16 with its byte order mark', () => {
  expect(textString('Ω\u{1F600}')).toBe('<feff03a9d83dde00>');
});
