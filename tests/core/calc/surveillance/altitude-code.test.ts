import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { altitudeCode, codedAltitudeFt } from '../../../../worker/core/calc/surveillance/altitude-code.ts';
import { RUNS } from '../../../property-runs.ts';

const [MIN_FT, MAX_FT] = [-1200, 126_700];
const steps = fc.integer({ min: MIN_FT / 100, max: MAX_FT / 100 }).map((step) => step * 100);
const pulsesApart = (a: number, b: number): number => (a ^ b).toString(2).replaceAll('0', '').length;

describe('altitudeCode()', () => {
  test('codedAltitudeFt() reads back every step, and no code stands for two', () => {
    const codes = new Set<number>();
    for (let altitudeFt = MIN_FT; altitudeFt <= MAX_FT; altitudeFt += 100) {
      const code = altitudeCode(altitudeFt) ?? Number.NaN;
      expect(codedAltitudeFt(code)).toBe(altitudeFt);
      codes.add(code);
    }
    expect(codes.size).toBe((MAX_FT - MIN_FT) / 100 + 1);
  });

  test('neighbours differ in one pulse, so that a reading on the edge is never far off', () => {
    for (let altitudeFt = MIN_FT; altitudeFt < MAX_FT; altitudeFt += 100) {
      const [here, above] = [altitudeCode(altitudeFt), altitudeCode(altitudeFt + 100)];
      expect(pulsesApart(here ?? 0, above ?? 0), `${altitudeFt}`).toBe(1);
    }
  });

  test('rounds to the nearest 100 ft', () => {
    fc.assert(
      fc.property(steps, fc.integer({ min: -49, max: 49 }), (altitudeFt, off) => {
        expect(altitudeCode(altitudeFt + off)).toBe(altitudeCode(altitudeFt));
      }),
      RUNS,
    );
  });

  test('is undefined outside what can be coded', () => {
    for (const altitudeFt of [-1251, 126_750, 126_751, Number.NaN]) expect(altitudeCode(altitudeFt)).toBeUndefined();
  });
});

test('codedAltitudeFt() refuses the patterns of C pulses that no altitude has', () => {
  for (const pulses of [0b000, 0b101, 0b111]) expect(codedAltitudeFt((0b010 << 3) | pulses)).toBeUndefined();
});
