import { expect, test } from 'vitest';
import { isNumbered, namesNumber } from '../../../worker/core/gate/same-number.ts';

test('namesNumber() finds a number among others, whatever its case and spaces', () => {
  expect(namesNumber('BP-2201 und BP-2202', 'BP-2202')).toBe(true);
  expect(namesNumber('H-2210 / H-2211', 'h-2210')).toBe(true);
  expect(namesNumber('B 4471', 'B4471')).toBe(true);
});

test('namesNumber() does not find a number within a longer one', () => {
  expect(namesNumber('BP-11', 'BP-1')).toBe(false);
  expect(namesNumber('130418', '30418')).toBe(false);
  expect(namesNumber('130418, 30418', '30418')).toBe(true);
});

test('isNumbered() asks for a digit', () => {
  expect(isNumbered('none')).toBe(false);
  expect(isNumbered('–')).toBe(false);
  expect(isNumbered(undefined)).toBe(false);
  expect(isNumbered('A1')).toBe(true);
});
