import { expect, test } from 'vitest';
import { pointer } from '../../../worker/core/record/pointer.ts';

// RFC 6901, section 5, gives these as examples.
test('pointer() escapes as RFC 6901 does', () => {
  expect(pointer()).toBe('');
  expect(pointer('foo', 0)).toBe('/foo/0');
  expect(pointer('')).toBe('/');
  expect(pointer('a/b')).toBe('/a~1b');
  expect(pointer('m~n')).toBe('/m~0n');
});
