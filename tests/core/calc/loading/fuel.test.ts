import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fuelArmMm, tankContent, tankLines, usableFuel } from '../../../../worker/core/calc/loading/fuel.ts';
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

  test('tankLines() rise from unusable to full by every line of the table, as fine as its bend asks for', () => {
    const steep = { ...tank, armByVolume: STEEP };
    const steps = tankLines(steep, { tabledTanks: 1, aircraftKg: 300 });
    expect([steps[0], steps.at(-1)]).toEqual([2, 80]);
    expect(steps).toContain(30);
    expect(steps.every((content, index) => index === 0 || content > (steps[index - 1] ?? content))).toBe(true);
    expect(tankLines(steep, { tabledTanks: 2, aircraftKg: 300 }).length).toBeGreaterThan(steps.length);
    expect(tankLines(tank, { tabledTanks: 1, aircraftKg: 300 }).length).toBeLessThan(steps.length);
    const { armByVolume: _table, ...plain } = tank;
    expect(tankLines({ ...plain, armMm: 1780 }, { tabledTanks: 1, aircraftKg: 300 })).toEqual([2, 80]);
  });

  test('a chord over one step stays within a few hundredths of a millimetre of the aircraft’s centre of gravity', () => {
    const aircraftKg = 380;
    const steep = { ...tank, armByVolume: STEEP };
    const steps = tankLines(steep, { tabledTanks: 1, aircraftKg });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: steps.length - 1 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (index, share) => {
          const [from, to] = [steps[index - 1] ?? 0, steps[index] ?? 0];
          const chord = (1 - share) * tankContent(steep, from).momentKgMm + share * tankContent(steep, to).momentKgMm;
          const missedMm = Math.abs(chord - tankContent(steep, from + share * (to - from)).momentKgMm) / aircraftKg;
          expect(missedMm).toBeLessThanOrEqual(0.04 + 1e-9);
        },
      ),
      RUNS,
    );
  });
});
