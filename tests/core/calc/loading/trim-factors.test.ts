import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leastPilotByAftLimit } from '../../../../worker/core/calc/loading/cockpit-load.ts';
import { trimFactor, trimmedPilotKg } from '../../../../worker/core/calc/loading/trim-factors.ts';
import { RUNS } from '../../../property-runs.ts';

test('factors of nose and tail masses give the pilot of a whole new balance', () => {
  const masses = fc.array(
    fc.record({ massKg: fc.integer({ min: 1, max: 12 }), armMm: fc.integer({ min: -2500, max: 5000 }) }),
    { maxLength: 4 },
  );
  const glider = { emptyKg: 260, emptyMomentKgMm: 260 * 640, seatArmMm: -410, limitArmMm: 387 };
  fc.assert(
    fc.property(masses, (extras) => {
      const basicKg = leastPilotByAftLimit(glider)?.massKg ?? Number.NaN;
      const trims = extras.map(({ massKg, armMm }) => ({
        massKg,
        factor: trimFactor({ massArmMm: armMm, ...glider }),
      }));
      expect(trimmedPilotKg(basicKg, trims)).toBeCloseTo(
        leastPilotByAftLimit({ ...glider, extras })?.massKg ?? Number.NaN,
        8,
      );
    }),
    RUNS,
  );
  expect(trimFactor({ massArmMm: glider.limitArmMm, ...glider })).toBe(0);
});
