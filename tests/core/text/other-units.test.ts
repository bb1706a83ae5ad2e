import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { ARM_UNITS, MASS_UNITS, otherUnits, VOLUME_UNITS } from '../../../worker/core/units/quantity.ts';
import { roundWithin } from '../../../worker/core/units/rounding.ts';
import { RUNS } from '../../property-runs.ts';

const METRIC = { mass: 'kg', arm: 'mm', volume: 'l' } as const;
const CUSTOMARY = { mass: 'lb', arm: 'in', volume: 'usgal' } as const;

describe('a measure in the other system', () => {
  // 600 / 0.45359237 = 1322.7736, 110 / 0.45359237 = 242.5085, 55 / 0.45359237 = 121.2542; 1650.3 / 25.4 = 64.9724; 78 / 3.785411784 = 20.6054.
  test('has the decimals of its unit, and a limit stays within itself', () => {
    const fmt = formatterFor(METRIC);
    expect(fmt.other('mass', 600)).toBe('1322.8\u00a0lb');
    expect(fmt.other('mass', 600, 'most')).toBe('1322.7\u00a0lb');
    expect(fmt.other('mass', 55, 'least')).toBe('121.3\u00a0lb');
    expect(fmt.other('mass', 110, 'least')).toBe('242.6\u00a0lb');
    expect(fmt.other('arm', 1650.3)).toBe('64.97\u00a0in');
    expect(fmt.other('volume', 78, 'most')).toBe('20.6\u00a0US gal');
  });

  // By hand: 53.647 kg is 53.7 kg at least; 53.7 / 0.45359237 = 118.388, at least 118.4 lb.
  test('of a limit is that of the figure printed in its own unit, so that the two agree', () => {
    const fmt = formatterFor(METRIC);
    const least = { bound: 'least' } as const;
    expect([fmt.measure('mass', 53.647, least), fmt.other('mass', 53.647, 'least')]).toEqual([
      '53.7\u00a0kg',
      '118.4\u00a0lb',
    ]);
    const pounds = formatterFor(CUSTOMARY);
    expect(pounds.measure('mass', 40 * 0.45359237, { bound: 'most' })).toBe('40.0\u00a0lb');
    expect(pounds.other('mass', 40 * 0.45359237, 'most')).toBe('18.1\u00a0kg');
  });

  test('of a limit never lies beyond the limit, nor beyond the figure beside it', () => {
    const figure = (text: string): number =>
      Number(text.replaceAll('\u00a0', ' ').replace('\u2212', '-').split(' ')[0]);
    const bounds = fc.constantFrom('least' as const, 'most' as const);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 999, noNaN: true }), bounds, (limitKg, bound) => {
        const fmt = formatterFor(METRIC);
        const own = figure(fmt.measure('mass', limitKg, { bound }));
        const other = figure(fmt.other('mass', limitKg, bound)) * 0.45359237;
        const [inner, outer] = bound === 'most' ? [other, limitKg] : [limitKg, other];
        expect(inner).toBeLessThanOrEqual(outer + 1e-6);
        expect(bound === 'most' ? own - other : other - own).toBeGreaterThanOrEqual(-1e-6);
      }),
      RUNS,
    );
  });

  test('of pounds and inches is in kilograms and millimetres', () => {
    const fmt = formatterFor(CUSTOMARY);
    expect(fmt.other('mass', 1232 * 0.45359237, 'most')).toBe('558.8\u00a0kg');
    expect(fmt.other('arm', 298.577)).toBe('299\u00a0mm');
  });

  test('is never in the unit of the record', () => {
    for (const mass of MASS_UNITS)
      for (const arm of ARM_UNITS)
        for (const volume of VOLUME_UNITS) {
          const other = otherUnits({ mass, arm, volume });
          expect(other.mass).not.toBe(mass);
          expect(other.arm).not.toBe(arm);
          expect(other.volume).not.toBe(volume);
        }
  });
});

describe('roundWithin()', () => {
  test('keeps a limit that needs no rounding', () => {
    expect(roundWithin(1322.7, 1, 'most')).toBe(1322.7);
    expect(roundWithin(0.1 + 0.2, 1, 'most')).toBe(0.3);
    expect(roundWithin(-9.5, 1, 'least')).toBe(-9.5);
  });

  test('never lies beyond the limit, nor a whole step within it', () => {
    const value = fc.double({ min: -5000, max: 5000, noNaN: true });
    fc.assert(
      fc.property(value, fc.integer({ min: 0, max: 3 }), (limit, decimals) => {
        const step = 10 ** -decimals;
        const [most, least] = [roundWithin(limit, decimals, 'most'), roundWithin(limit, decimals, 'least')];
        expect(most).toBeLessThanOrEqual(limit + step * 1e-5);
        expect(most).toBeGreaterThan(limit - step * 1.00001);
        expect(least).toBeGreaterThanOrEqual(limit - step * 1e-5);
        expect(least).toBeLessThan(limit + step * 1.00001);
      }),
      RUNS,
    );
  });
});
