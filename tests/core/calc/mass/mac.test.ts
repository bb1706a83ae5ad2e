import fc from 'fast-check';
import { expect, test } from 'vitest';
import { armAtPercentMm, percentMac } from '../../../../worker/core/calc/mass/mac.ts';
import { RUNS } from '../../../property-runs.ts';

test('armAtPercentMm() is the inverse of percentMac(), and the ends of the chord are 0 and 100 %', () => {
  const chords = fc.record({
    leadingEdgeArmMm: fc.integer({ min: -3000, max: 3000 }),
    lengthMm: fc.integer({ min: 300, max: 4000 }),
  });
  fc.assert(
    fc.property(chords, fc.integer({ min: -50, max: 150 }), (mac, percent) => {
      expect(percentMac(mac, armAtPercentMm(mac, percent))).toBeCloseTo(percent, 9);
      expect(armAtPercentMm(mac, 0)).toBe(mac.leadingEdgeArmMm);
      expect(armAtPercentMm(mac, 100)).toBe(mac.leadingEdgeArmMm + mac.lengthMm);
    }),
    RUNS,
  );
});
