import { expect, test } from 'vitest';
import { serialiseObject } from '../../../../worker/core/print/file/serialise-object.ts';

const text = (value: number): string => serialiseObject(value, () => 'null');

test.each([
  [0, '0'],
  [-17, '-17'],
  [0.5, '0.5'],
  [1 / 3, '0.3333333333'],
  [1e-12, '0'],
  [1e15, '1000000000000000'],
  [1e21, '1000000000000000000000'],
  [-1.5e15, '-1500000000000000'],
])('serialiseObject() writes %s without an exponent', (value, expected) => {
  expect(text(value)).toBe(expected);
});

test('serialiseObject() writes no number larger than readers take', () => {
  for (const value of [1e300, Number.POSITIVE_INFINITY]) {
    expect(text(value)).toMatch(/^\d{39}$/);
    expect(Number(text(value))).toBe(3.4e38);
    expect(text(-value)).toBe(`-${text(value)}`);
  }
});
