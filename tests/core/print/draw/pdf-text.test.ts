import { expect, test } from 'vitest';
import { number, showOperator, textString } from '../../../../worker/core/print/draw/pdf-text.ts';

test('number() writes hundredths, no exponent and no negative zero', () => {
  expect([0.004, -0.001, 12.345, 1e-9, 841.89].map(number)).toEqual(['0', '0', '12.35', '0', '841.89']);
});

test('showOperator() escapes what would end the string', () => {
  expect(showOperator('(1)\\', 'regular')).toBe('(\0\\(\x001\0\\)\0\\\\)Tj');
  // U+0128 and U+010D hold a parenthesis and a carriage return in their low bytes.
  expect(showOperator('\u0128\u010d', 'regular')).toBe('(\u0001\\(\u0001\\r)Tj');
});

test('showOperator() kerns', () => {
  expect(showOperator('1To', 'regular')).toBe('[(\x001\0T)66(\0o)]TJ');
});

test('textString() writes UTF-16 with its byte order mark', () => {
  expect(textString('Ω\u{1F600}')).toBe('<feff03a9d83dde00>');
});
