import { expect, test } from 'vitest';
import { formatterFor } from '../../../worker/core/text/formatter.ts';

test('signed() without decimals prints a figure with the digits that it was read with', () => {
  const fmt = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' });
  expect([0, 4, 0.25, -1.5, 12.04].map((angleDeg) => fmt.signed(angleDeg))).toEqual([
    '0.0',
    '+4.0',
    '+0.25',
    '−1.5',
    '+12.04',
  ]);
});
