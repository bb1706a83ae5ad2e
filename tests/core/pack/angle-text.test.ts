import { expect, test } from 'vitest';
import { angleText } from '../../../worker/core/pack/views/angle-text.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';

test('angleText() prints an angle with the digits that it was read with', () => {
  const fmt = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' });
  expect([0, 4, 0.25, -1.5, 12.04].map((angleDeg) => angleText(fmt, angleDeg))).toEqual([
    '0.0',
    '+4.0',
    '+0.25',
    '−1.5',
    '+12.04',
  ]);
});
