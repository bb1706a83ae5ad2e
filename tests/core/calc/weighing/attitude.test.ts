import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { attitudeShift } from '../../../../worker/core/calc/weighing/attitude.ts';
import { RUNS } from '../../../property-runs.ts';
import { expectSpread, trialsOf } from '../monte-carlo.ts';

const DEGREE = Math.PI / 180;

/** Arm that two scales show for a turned aircraft: its points are reckoned at the arms of the level one. */
function apparentArm(cg: { armMm: number; heightMm: number }, noseUpDeg: number): number {
  const [front, rear] = [700, 2400];
  const across = (armMm: number, heightMm: number): number =>
    armMm * Math.cos(noseUpDeg * DEGREE) + heightMm * Math.sin(noseUpDeg * DEGREE);
  // Moments about the front point, on level ground, of a mass of one.
  const onRear = (across(cg.armMm, cg.heightMm) - across(front, 0)) / (across(rear, 0) - across(front, 0));
  return front * (1 - onRear) + rear * onRear;
}

describe('attitudeShift()', () => {
  test('leads from the reactions of a turned aircraft to the arm of the level one', () => {
    const cases = fc.record({
      armMm: fc.integer({ min: 700, max: 2400 }),
      heightMm: fc.integer({ min: -1500, max: 1500 }),
      tenths: fc.integer({ min: -80, max: 80 }),
    });
    fc.assert(
      fc.property(cases, ({ armMm, heightMm, tenths }) => {
        const errorDeg = tenths / 10;
        const { shiftMm } = attitudeShift({ heightMm, errorDeg });
        expect(apparentArm({ armMm, heightMm }, errorDeg) + shiftMm).toBeCloseTo(armMm, 6);
      }),
      RUNS,
    );
  });

  test.each([0, 4])('has the uncertainty of a Monte Carlo at %i°', (errorDeg) => {
    const [heightMm, standardHeightMm, standardErrorDeg] = [900, 40, 0.1];
    const trials = trialsOf(
      (draw) =>
        attitudeShift({
          heightMm: heightMm + draw.normal(standardHeightMm),
          errorDeg: errorDeg + draw.normal(standardErrorDeg),
        }).shiftMm,
    );
    expectSpread(trials, attitudeShift({ heightMm, standardHeightMm, errorDeg, standardErrorDeg }).standardMm);
  });
});
