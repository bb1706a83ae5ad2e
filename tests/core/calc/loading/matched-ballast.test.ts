import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { matchedTailBallastKg, tailFilling } from '../../../../worker/core/calc/loading/matched-ballast.ts';
import { atArm, cgMm, total } from '../../../../worker/core/calc/mass/mass-moment.ts';
import { RUNS } from '../../../property-runs.ts';

const DRY = atArm(420, 350);
const TAIL_MM = 5260;
/** The tank is swept: its water moves aft as it fills. */
const wingArmMm = (waterKg: number): number => 200 + waterKg * 0.1;

/** Tail ballast that leaves the centre of gravity where it is without water, found by halving. */
function balancing(waterKg: number): number {
  let [low, high] = [0, 50];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    const arm = cgMm(total([DRY, atArm(waterKg, wingArmMm(waterKg)), atArm(middle, TAIL_MM)]));
    if (arm < 350) low = middle;
    else high = middle;
  }
  return low;
}

const TABLE = [160, 120, 80, 40].map((waterKg) => ({ wingWaterKg: waterKg, tailBallastKg: balancing(waterKg) }));

describe('matchedTailBallastKg()', () => {
  test('keeps the centre of gravity of a new balance within a millimetre, at every filling', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1600 }), (tenths) => {
        const waterKg = tenths / 10;
        const tailKg = matchedTailBallastKg(TABLE, waterKg) ?? Number.NaN;
        const arm = cgMm(total([DRY, atArm(waterKg, wingArmMm(waterKg)), atArm(tailKg, TAIL_MM)]));
        expect(Math.abs(arm - 350)).toBeLessThan(1);
      }),
      RUNS,
    );
  });

  test('gives the lines of the table, nothing without wing water, and no guess above the last line', () => {
    for (const { wingWaterKg, tailBallastKg } of TABLE)
      expect(matchedTailBallastKg(TABLE, wingWaterKg)).toBe(tailBallastKg);
    expect(matchedTailBallastKg(TABLE, 0)).toBe(0);
    expect(matchedTailBallastKg(TABLE, 160.1)).toBeUndefined();
    expect(matchedTailBallastKg(TABLE, -1)).toBeUndefined();
    expect(matchedTailBallastKg([], 0)).toBeUndefined();
  });

  test('takes a line for empty wings as the table has it', () => {
    expect(matchedTailBallastKg([{ wingWaterKg: 0, tailBallastKg: 1 }, ...TABLE], 0)).toBe(1);
  });
});

describe('tailFilling()', () => {
  test('allows up to the table, and never moves the centre of gravity aft of where it is dry', () => {
    const fillings = fc.tuple(fc.integer({ min: 0, max: 160 }), fc.integer({ min: 0, max: 80 }));
    fc.assert(
      fc.property(fillings, ([wingWaterKg, tenths]) => {
        const tailBallastKg = tenths / 10;
        const filling = tailFilling({ table: TABLE, wingWaterKg, tailBallastKg });
        const arm = cgMm(total([DRY, atArm(wingWaterKg, wingArmMm(wingWaterKg)), atArm(tailBallastKg, TAIL_MM)]));
        // Between the lines the straight table is within a millimetre of the balance.
        if (filling?.isAllowed) expect(arm).toBeLessThan(351);
        else expect(arm).toBeGreaterThan(349);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test('allows one mark above the table, but none without wing water, where it takes all for too much', () => {
    const matched = TABLE[3]?.tailBallastKg ?? 0;
    const at = (wingWaterKg: number, tailBallastKg: number) =>
      tailFilling({ table: TABLE, wingWaterKg, tailBallastKg, toleranceKg: 0.5 });
    expect(at(40, matched + 0.5)?.isAllowed).toBe(true);
    expect(at(40, matched + 0.6)?.isAllowed).toBe(false);
    expect(at(40, matched + 0.6)?.overKg).toBeCloseTo(0.6, 12);
    expect(at(0, 0.1)).toEqual({ matchedKg: 0, overKg: 0.1, isAllowed: false });
    expect(at(0, 0)?.isAllowed).toBe(true);
    expect(at(161, 1)).toBeUndefined();
  });
});
