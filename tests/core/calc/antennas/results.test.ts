import { describe, expect, test } from 'vitest';
import { dragN } from '../../../../worker/core/calc/antennas/drag.ts';
import { antennaResults, cableLossDb } from '../../../../worker/core/calc/antennas/results.ts';
import { readVisit } from '../read-visit.ts';

function demo() {
  const { antennas } = readVisit('nose-wheel-full');
  if (!antennas) throw new Error('the full visit has antennas');
  return antennas;
}

describe('antennaResults()', () => {
  test('lists every pair once, at its distance in space', () => {
    const { spacings, antennas } = antennaResults(demo());
    expect(spacings).toHaveLength((antennas.length * (antennas.length - 1)) / 2);
    // From (3180, 0, 640) to (2590, 0, −320)
    expect(spacings[0]?.distanceMm).toBeCloseTo(Math.hypot(590, 960), 9);
    expect(spacings[0]?.neededMm).toBe(700);
  });

  test('the same pair is as far apart whichever comes first', () => {
    const items = demo().items;
    const there = antennaResults({ items }).spacings.map(({ distanceMm }) => distanceMm);
    const back = antennaResults({ items: items.toReversed() }).spacings.map(({ distanceMm }) => distanceMm);
    expect(back.sort()).toEqual(there.sort());
  });

  test('computes no drag without a speed', () => {
    const { items } = demo();
    expect(antennaResults({ items }).antennas.every((antenna) => antenna.dragN === undefined)).toBe(true);
  });
});

test('cableLossDb() adds its connectors', () => {
  const cable = { type: 'RG-400', lengthM: 2, lossDbPerM: 0.45, connectors: 3, lossDbPerConnector: 0.1 };
  expect(cableLossDb(cable)).toBeCloseTo(1.2, 9);
});

test('dragN() goes with the area and with the square of the speed', () => {
  expect(dragN(40, 200)).toBeCloseTo(2 * dragN(20, 200), 9);
  expect(dragN(40, 200)).toBeCloseTo(4 * dragN(40, 100), 9);
});
