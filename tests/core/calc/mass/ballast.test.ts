import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ballastToAddKg, massToRemoveKg, type WantedBalance } from '../../../../worker/core/calc/mass/ballast.ts';
import { atArm, cgMm, total } from '../../../../worker/core/calc/mass/mass-moment.ts';
import { RUNS } from '../../../property-runs.ts';

const mm = fc.integer({ min: -2000, max: 6000 });
const balances = fc.record({
  massKg: fc.integer({ min: 100, max: 2000 }),
  armMm: mm,
  wantedArmMm: mm,
  placeArmMm: mm,
});

/** Arm after a signed mass at the place, weighed anew. */
const armWith = ({ massKg, armMm, placeArmMm }: WantedBalance, changeKg: number): number =>
  cgMm(total([atArm(massKg, armMm), atArm(changeKg, placeArmMm)]));

/** Whether any of many changes brings the arm across the wanted one. */
function isCrossed(balance: WantedBalance, changesKg: readonly number[]): boolean {
  const sides = [0, ...changesKg].map((changeKg) => Math.sign(armWith(balance, changeKg) - balance.wantedArmMm));
  return new Set(sides).size > 1;
}

const ADDED = Array.from({ length: 60 }, (_, step) => 1.35 ** step * 0.01);

describe('ballastToAddKg()', () => {
  test('gives the wanted arm in a new balance, or no mass tried crosses it', () => {
    fc.assert(
      fc.property(balances, (balance) => {
        fc.pre(balance.armMm !== balance.wantedArmMm);
        const ballastKg = ballastToAddKg(balance);
        if (ballastKg === undefined) expect(isCrossed(balance, ADDED)).toBe(false);
        else expect(armWith(balance, ballastKg)).toBeCloseTo(balance.wantedArmMm, 5);
      }),
      { ...RUNS, numRuns: 400 },
    );
  });

  test('is infinite at the wanted arm itself, so there is none; nil where nothing has to change', () => {
    const at = { massKg: 400, armMm: 1000, wantedArmMm: 1100, placeArmMm: 1100 };
    expect(ballastToAddKg(at)).toBeUndefined();
    expect(ballastToAddKg({ ...at, wantedArmMm: 1000 })).toBe(0);
  });
});

describe('massToRemoveKg()', () => {
  test('gives the wanted arm in a new balance, or no removal tried crosses it', () => {
    fc.assert(
      fc.property(balances, (balance) => {
        fc.pre(balance.armMm !== balance.wantedArmMm);
        const removedKg = massToRemoveKg(balance);
        const shares = Array.from({ length: 999 }, (_, step) => (-balance.massKg * (step + 1)) / 1000);
        if (removedKg !== undefined) expect(armWith(balance, -removedKg)).toBeCloseTo(balance.wantedArmMm, 4);
        else expect(isCrossed(balance, shares)).toBe(false);
      }),
      { ...RUNS, numRuns: 400 },
    );
  });

  test('undoes ballast that was added', () => {
    fc.assert(
      fc.property(balances, (balance) => {
        const addedKg = ballastToAddKg(balance) ?? 0;
        fc.pre(addedKg > 1e-3 && addedKg < 1e5);
        const heavier = { ...balance, massKg: balance.massKg + addedKg };
        const back = massToRemoveKg({ ...heavier, armMm: balance.wantedArmMm, wantedArmMm: balance.armMm });
        expect((back ?? Number.NaN) / addedKg).toBeCloseTo(1, 6);
      }),
      RUNS,
    );
  });

  test('never removes the whole aircraft', () => {
    expect(massToRemoveKg({ massKg: 400, armMm: 1000, wantedArmMm: 1100, placeArmMm: 1050 })).toBeUndefined();
  });
});
