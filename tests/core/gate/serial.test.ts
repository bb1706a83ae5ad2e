import { expect, test } from 'vitest';
import { sameSerial } from '../../../worker/core/gate/serial.ts';

test('sameSerial() leaves out spaces and letter case, and nothing else', () => {
  expect(sameSerial('lm-120 03', 'LM-12003')).toBe(true);
  expect(sameSerial('88127', '88172')).toBe(false);
  expect(sameSerial('LM-12', 'LM12')).toBe(false);
});
