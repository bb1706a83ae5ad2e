import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atArm, cgMm, total } from '../../../../worker/core/calc/mass/mass-moment.ts';
import { massToMoveKg, shiftByMovedMm } from '../../../../worker/core/calc/mass/shift.ts';
import { RUNS } from '../../../property-runs.ts';

const moved = fc.record({
  restKg: fc.integer({ min: 100, max: 2000 }),
  restMm: fc.integer({ min: -500, max: 4000 }),
  itemKg: fc.integer({ min: 1, max: 200 }),
  fromMm: fc.integer({ min: -2000, max: 6000 }),
  toMm: fc.integer({ min: -2000, max: 6000 }),
});

describe('a mass moved on board', () => {
  test('shifts the centre of gravity as a new balance of both loadings finds', () => {
    fc.assert(
      fc.property(moved, ({ restKg, restMm, itemKg, fromMm, toMm }) => {
        const rest = atArm(restKg, restMm);
        const [before, after] = [fromMm, toMm].map((arm) => cgMm(total([rest, atArm(itemKg, arm)])));
        const shift = shiftByMovedMm({ totalKg: restKg + itemKg, movedKg: itemKg, distanceMm: toMm - fromMm });
        expect((before ?? 0) + shift).toBeCloseTo(after ?? 0, 6);
      }),
      RUNS,
    );
  });

  test('has the mass that a new balance needs for the wanted shift', () => {
    fc.assert(
      fc.property(moved, ({ restKg, restMm, itemKg, fromMm, toMm }) => {
        fc.pre(fromMm !== toMm);
        const rest = atArm(restKg, restMm);
        const [before, after] = [fromMm, toMm].map((arm) => cgMm(total([rest, atArm(itemKg, arm)])));
        const shiftMm = (after ?? 0) - (before ?? 0);
        const foundKg = massToMoveKg({ totalKg: restKg + itemKg, shiftMm, distanceMm: toMm - fromMm });
        expect(foundKg).toBeCloseTo(itemKg, 6);
      }),
      RUNS,
    );
  });

  test('is not found where the way is nil, leads away, or would take more than the aircraft', () => {
    expect(massToMoveKg({ totalKg: 500, shiftMm: 10, distanceMm: 0 })).toBeUndefined();
    expect(massToMoveKg({ totalKg: 500, shiftMm: 10, distanceMm: -1000 })).toBeUndefined();
    expect(massToMoveKg({ totalKg: 500, shiftMm: 10, distanceMm: 9 })).toBeUndefined();
    expect(massToMoveKg({ totalKg: 500, shiftMm: 0, distanceMm: 0 })).toBe(0);
  });
});
