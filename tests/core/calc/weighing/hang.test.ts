import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type HangTests, hangAngle, hungCg } from '../../../../worker/core/calc/weighing/hang.ts';
import { RUNS } from '../../../property-runs.ts';
import { expectSpread, trialsOf } from '../monte-carlo.ts';

interface Mass {
  massKg: number;
  aftMm: number;
  belowMm: number;
}

/** Angle at which masses hang under a bolt, tail down: turned by halving until they balance about it. */
function equilibriumDeg(masses: readonly Mass[]): number {
  const aftOfBolt = (deg: number): number => {
    const angle = (deg * Math.PI) / 180;
    // Tail down moves what is below the bolt forward.
    return masses.reduce(
      (sum, { massKg, aftMm, belowMm }) => sum + massKg * (aftMm * Math.cos(angle) - belowMm * Math.sin(angle)),
      0,
    );
  };
  let [noseDown, tailDown] = [-89, 89];
  for (let step = 0; step < 80; step++) {
    const middle = (noseDown + tailDown) / 2;
    if (aftOfBolt(middle) > 0) noseDown = middle;
    else tailDown = middle;
  }
  return noseDown;
}

const hungs = fc.record({
  cgArmMm: fc.integer({ min: -400, max: 400 }),
  cgHeightMm: fc.integer({ min: 300, max: 1200 }),
  boltArmMm: fc.integer({ min: -50, max: 50 }),
  boltHeightMm: fc.integer({ min: 1400, max: 2400 }),
});

describe('hangAngle()', () => {
  test('is where the aircraft balances about its bolt', () => {
    fc.assert(
      fc.property(hungs, (hung) => {
        const aftMm = hung.cgArmMm - hung.boltArmMm;
        const belowMm = hung.boltHeightMm - hung.cgHeightMm;
        expect(hangAngle(hung)?.angleDeg).toBeCloseTo(equilibriumDeg([{ massKg: 1, aftMm, belowMm }]), 8);
      }),
      RUNS,
    );
  });

  test('has the uncertainty of a Monte Carlo, far from level', () => {
    const hung = { cgArmMm: 350, cgHeightMm: 700, boltArmMm: 0, boltHeightMm: 1700 };
    const trials = trialsOf(
      (draw) => hangAngle({ ...hung, cgArmMm: 350 + draw.normal(4), cgHeightMm: 700 + draw.normal(15) })?.angleDeg ?? 0,
    );
    const found = hangAngle({ ...hung, standardCgArmMm: 4, standardCgHeightMm: 15 });
    expectSpread(trials, found?.standardDeg ?? 0);
  });

  test('needs the centre of gravity below the bolt', () => {
    expect(hangAngle({ cgArmMm: 0, cgHeightMm: 1700, boltArmMm: 0, boltHeightMm: 1700 })).toBeUndefined();
  });
});

/** Two tests of an invented gyroplane, by the angles at which its masses balance. */
function testsOf(aftMm: number, belowMm: number, added: Mass): HangTests {
  const aircraft = { massKg: 260, aftMm, belowMm };
  return {
    massKg: aircraft.massKg,
    boltArmMm: 1800,
    addedKg: added.massKg,
    addedAftMm: added.aftMm,
    addedBelowMm: added.belowMm,
    firstDeg: equilibriumDeg([aircraft]),
    secondDeg: equilibriumDeg([aircraft, added]),
  };
}

const ADDED = { massKg: 20, aftMm: 1400, belowMm: 1100 };

describe('hungCg()', () => {
  test('finds the place whose equilibria were measured', () => {
    const places = fc.record({
      aftMm: fc.integer({ min: -200, max: 200 }),
      belowMm: fc.integer({ min: 500, max: 1500 }),
      massKg: fc.integer({ min: 5, max: 60 }),
      addedAftMm: fc.integer({ min: -2000, max: 2000 }).filter((each) => Math.abs(each) > 800),
      addedBelowMm: fc.integer({ min: -200, max: 1500 }),
    });
    fc.assert(
      fc.property(places, ({ aftMm, belowMm, massKg, addedAftMm, addedBelowMm }) => {
        const added = { massKg, aftMm: addedAftMm, belowMm: addedBelowMm };
        // Both on one line from the bolt: the mass turns nothing, so it tells nothing.
        fc.pre(Math.abs(aftMm / belowMm - addedAftMm / addedBelowMm) > 0.2);
        const found = hungCg(testsOf(aftMm, belowMm, added));
        expect(found?.armMm).toBeCloseTo(1800 + aftMm, 5);
        expect(found?.depthMm).toBeCloseTo(belowMm, 5);
      }),
      RUNS,
    );
  });

  test('has the uncertainty of a Monte Carlo, of all quantities and of a common error of both angles', () => {
    const tests = testsOf(150, 900, ADDED);
    const standards = {
      standardMassKg: 0.5,
      standardBoltArmMm: 1,
      standardAddedKg: 0.05,
      standardAddedAftMm: 5,
      standardAddedBelowMm: 20,
      standardReadingDeg: 0.05,
      standardZeroDeg: 0.2,
    };
    const drawn = trialsOf((draw) => {
      const zeroDeg = draw.normal(standards.standardZeroDeg);
      return hungCg({
        massKg: tests.massKg + draw.normal(standards.standardMassKg),
        boltArmMm: tests.boltArmMm + draw.normal(standards.standardBoltArmMm),
        addedKg: tests.addedKg + draw.normal(standards.standardAddedKg),
        addedAftMm: tests.addedAftMm + draw.normal(standards.standardAddedAftMm),
        addedBelowMm: tests.addedBelowMm + draw.normal(standards.standardAddedBelowMm),
        firstDeg: tests.firstDeg + zeroDeg + draw.normal(standards.standardReadingDeg),
        secondDeg: tests.secondDeg + zeroDeg + draw.normal(standards.standardReadingDeg),
      });
    });
    const found = hungCg({ ...tests, ...standards });
    expectSpread(
      drawn.map((each) => each?.armMm ?? Number.NaN),
      found?.standardArmMm ?? 0,
    );
    expectSpread(
      drawn.map((each) => each?.depthMm ?? Number.NaN),
      found?.standardDepthMm ?? 0,
    );
  });

  test('knows the depth better, the more the mass turns the aircraft', () => {
    const standardOf = (massKg: number): number =>
      hungCg({ ...testsOf(0, 900, { ...ADDED, massKg }), standardReadingDeg: 0.1 })?.standardDepthMm ?? Number.NaN;
    expect(standardOf(5)).toBeGreaterThan(3 * standardOf(20));
  });

  test('finds nothing from equal angles, or from a mass that turned the aircraft the wrong way', () => {
    const tests = testsOf(60, 900, ADDED);
    expect(hungCg({ ...tests, secondDeg: tests.firstDeg })).toBeUndefined();
    expect(hungCg({ ...tests, secondDeg: tests.firstDeg - 2 })).toBeUndefined();
  });
});
