import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { factorOf, type Units } from '../../../worker/core/units/quantity.ts';
import { RUNS } from '../../property-runs.ts';

const POUNDS: Units = { mass: 'lb', arm: 'in', volume: 'usgal' };
const fmt = formatterFor(POUNDS);
const LB = factorOf('mass', POUNDS);
const mass = (lb: number, limits: { least?: number; most?: number } = {}): string => {
  const { least, most } = limits;
  const bound = fmt.inward('mass', lb * LB, {
    ...(least !== undefined && { least: least * LB }),
    ...(most !== undefined && { most: most * LB }),
  });
  return fmt.number('mass', lb * LB, { bound });
};

describe('inward()', () => {
  test('keeps what is within a limit within what is printed of it', () => {
    expect(mass(50.36, { most: 50.36 })).toBe('50.3');
    expect(mass(50.352, { most: 50.36 })).toBe('50.3');
    expect(mass(121.34, { least: 121.34 })).toBe('121.4');
    expect(mass(121.34, { least: 100, most: 200 })).toBe('121.3');
  });

  test('does not bring inside what lies beyond', () => {
    expect(mass(50.38, { most: 50.36 })).toBe('50.4');
    expect(mass(121.3, { least: 121.34 })).toBe('121.3');
  });

  test('prints no figure within limits beyond either of them as printed', () => {
    const tenths = (lb: number) => fc.double({ min: lb, max: lb + 100, noNaN: true });
    fc.assert(
      fc.property(tenths(50), tenths(160), fc.double({ min: 0, max: 1, noNaN: true }), (least, most, share) => {
        const printed = Number(mass(least + share * (most - least), { least, most }));
        expect(printed).toBeGreaterThanOrEqual(least - 1e-6);
        expect(printed).toBeLessThanOrEqual(most + 1e-6);
      }),
      RUNS,
    );
  });
});
