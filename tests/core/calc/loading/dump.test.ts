import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { afterDump, dumpTime } from '../../../../worker/core/calc/loading/dump.ts';
import { RUNS } from '../../../property-runs.ts';
import { expectSpread, trialsOf } from '../monte-carlo.ts';

describe('dumpTime()', () => {
  test('is the time after which a tank that is drained in small steps is empty', () => {
    let [leftL, seconds] = [80, 0];
    for (; leftL > 0; seconds += 0.001) leftL -= 0.55 * 0.001;
    expect(dumpTime({ volumeL: 80, flowLPerS: 0.55 })?.seconds).toBeCloseTo(seconds, 2);
  });

  test('has the uncertainty of a Monte Carlo, while that of the flow is small', () => {
    const given = { volumeL: 80, flowLPerS: 0.5 };
    const trials = trialsOf((draw) => dumpTime({ ...given, flowLPerS: 0.5 + draw.normal(0.01) })?.seconds ?? 0);
    expectSpread(trials, dumpTime({ ...given, standardFlowLPerS: 0.01 })?.standardS ?? 0);
  });

  test('never ends without flow', () => expect(dumpTime({ volumeL: 80, flowLPerS: 0 })).toBeUndefined());
});

describe('afterDump()', () => {
  const waters = fc.record({
    leftKg: fc.integer({ min: 0, max: 100 }),
    rightKg: fc.integer({ min: 0, max: 100 }),
    lateralMm: fc.integer({ min: 500, max: 4000 }),
  });

  test('balances about its lateral centre of gravity, with what is left in a stuck side', () => {
    fc.assert(
      fc.property(waters, fc.constantFrom('left', 'right', undefined), fc.integer(), (water, stuck, rest) => {
        const given = { massKg: 600, water: { ...water, ...(stuck && { stuck }) }, restLateralMomentKgMm: rest % 9000 };
        const { massKg, lateralMm = Number.NaN } = afterDump(given);
        const [left, right] = [stuck === 'left' ? water.leftKg : 0, stuck === 'right' ? water.rightKg : 0];
        const restKg = 600 - water.leftKg - water.rightKg;
        expect(massKg).toBe(restKg + left + right);
        const restMm = given.restLateralMomentKgMm / restKg;
        // Levers about the centre of gravity: what is left in a wing, and the aircraft itself.
        const turning =
          left * (-water.lateralMm - lateralMm) + right * (water.lateralMm - lateralMm) + restKg * (restMm - lateralMm);
        expect(turning).toBeCloseTo(0, 5);
      }),
      RUNS,
    );
  });

  test('has no place where nothing is left', () => {
    const water = { leftKg: 50, rightKg: 50, lateralMm: 2000 };
    expect(afterDump({ massKg: 100, water }).lateralMm).toBeUndefined();
  });
});
