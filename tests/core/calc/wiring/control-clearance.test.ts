import { expect, test } from 'vitest';
import { CONTROL_CLEARANCE_MM, isClearOfControl } from '../../../../worker/core/calc/wiring/control-clearance.ts';

test('isClearOfControl() a guard makes up for distance, nothing makes up for a clamp', () => {
  const near = (distanceMm: number, isSecured: boolean, isGuarded: boolean) =>
    isClearOfControl({ what: 'Loom', control: 'Cable', distanceMm, isSecured, isGuarded });
  expect(near(CONTROL_CLEARANCE_MM, true, false)).toBe(true);
  expect(near(CONTROL_CLEARANCE_MM - 1, true, false)).toBe(false);
  expect(near(20, true, true)).toBe(true);
  expect(near(500, false, true)).toBe(false);
});
