import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chordOf, fuelArmMm, tankContent, usableFuel } from '../../../../worker/core/calc/loading/fuel.ts';
import type { FuelStation } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const TANK = readVisit('nose-wheel-full').aircraft.stations.find(
  (station): station is FuelStation => station.kind === 'fuel',
);
if (!TANK) throw new Error('the nose-wheel visit has a tank');
const tank = TANK;

/** A tank of which a part lies much further aft. */
const STEEP = [
  { volumeL: 0, armMm: 1500 },
  { volumeL: 30, armMm: 1520 },
  { volumeL: 80, armMm: 1900 },
];

describe('a tank with a table of arms', () => {
  test('fuelArmMm() is the arm of the whole content', () => {
    expect([0, 10, 20, 35, 80, 90].map((content) => fuelArmMm(tank, content))).toEqual([
      1762, 1765, 1768, 1773.5, 1790, 1790,
    ]);
  });

  test('usableFuel() is the content less the unusable, in mass and in moment', () => {
    const { massKg, momentKgMm } = usableFuel(tank, 80);
    expect(massKg).toBeCloseTo(78 * 0.72, 12);
    expect(momentKgMm).toBeCloseTo(80 * 0.72 * 1790 - 2 * 0.72 * 1762.6, 6);
    expect(usableFuel(tank, 2).massKg).toBe(0);
    expect(usableFuel(tank, 1).massKg).toBeCloseTo(-0.72, 12);
  });

  test('chordOf() bounds how far a moment lies off it on both sides, and no further than it has to', () => {
    const steep = { ...tank, armByVolume: STEEP };
    const ends = fc.tuple(fc.double({ min: 2, max: 80, noNaN: true }), fc.double({ min: 2, max: 80, noNaN: true }));
    fc.assert(
      fc.property(ends, ([a, b]) => {
        const [fromL, toL] = [Math.min(a, b), Math.max(a, b)];
        fc.pre(toL - fromL > 0.01);
        const { belowKgMm, aboveKgMm, splitL } = chordOf(steep, fromL, toL);
        const [begin, end] = [fromL, toL].map((content) => tankContent(steep, content).momentKgMm) as [number, number];
        const off = Array.from({ length: 2001 }, (_, step) => {
          const share = step / 2000;
          const content = fromL + share * (toL - fromL);
          return tankContent(steep, content).momentKgMm - (1 - share) * begin - share * end;
        });
        // The grid misses the parabola by ρ·|b|·ΔV²/4 over a step of 0.04 l: 0.002 kg·mm; at the bend by 0.3 kg·mm.
        expect(Math.max(...off)).toBeLessThanOrEqual(aboveKgMm + 1e-6);
        expect(Math.max(...off)).toBeGreaterThanOrEqual(aboveKgMm - 5);
        expect(-Math.min(...off)).toBeLessThanOrEqual(belowKgMm + 1e-6);
        expect(-Math.min(...off)).toBeGreaterThanOrEqual(belowKgMm - 5);
        expect(splitL > fromL && splitL < toL).toBe(true);
        if (fromL < 30 && toL > 30) expect(splitL).toBe(30);
      }),
      RUNS,
    );
  });

  test('chordOf() is off a parabola by ρ·|b|·ΔV²/4, and never off one arm', () => {
    // 7.6 mm for a litre over 50 l.
    const { belowKgMm, aboveKgMm, splitL } = chordOf({ ...tank, armByVolume: STEEP }, 30, 80);
    expect(belowKgMm).toBeCloseTo((0.72 * 7.6 * 50 ** 2) / 4, 6);
    expect(aboveKgMm).toBeCloseTo(0, 6);
    expect(splitL).toBeCloseTo(55, 9);
    const { armByVolume: _table, ...plain } = tank;
    expect(chordOf({ ...plain, armMm: 1780 }, 2, 80)).toMatchObject({ belowKgMm: 0, aboveKgMm: 0 });
  });
});
