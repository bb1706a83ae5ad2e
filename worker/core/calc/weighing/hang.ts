import { radians } from '../../units/angle.ts';

/** An aircraft under one bolt, in its own axes: aft and up are positive. Uncertainties are relative to the bolt. */
export interface Hung {
  cgArmMm: number;
  cgHeightMm: number;
  boltArmMm: number;
  boltHeightMm: number;
  standardCgArmMm?: number;
  standardCgHeightMm?: number;
}

/**
 * Returns the angle at which an aircraft hangs: tan α = (X − x_b) / (z_b − Z), tail down positive.
 *
 * u(α) = √(u²(X) + tan² α·u²(Z)) / (H·(1 + tan² α))
 *
 * @returns degrees; undefined if the centre of gravity is not below the bolt
 * @source derived from statics: the centre of gravity is under the bolt; checked by turning the aircraft until it is,
 *   and Monte Carlo
 * @example hangAngle({ cgArmMm: 40, cgHeightMm: 700, boltArmMm: 0, boltHeightMm: 1700 }).angleDeg  // 2.29
 */
export function hangAngle(hung: Hung): { angleDeg: number; standardDeg: number } | undefined {
  const depthMm = hung.boltHeightMm - hung.cgHeightMm;
  if (!(depthMm > 0)) return undefined;
  const slope = (hung.cgArmMm - hung.boltArmMm) / depthMm;
  const standardSlope = Math.hypot(hung.standardCgArmMm ?? 0, slope * (hung.standardCgHeightMm ?? 0)) / depthMm;
  return { angleDeg: degrees(Math.atan(slope)), standardDeg: degrees(standardSlope / (1 + slope ** 2)) };
}

const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** Two hang tests of one aircraft, the second with a known mass; every standard uncertainty is zero if left out. */
export interface HangTests {
  massKg: number;
  standardMassKg?: number;
  boltArmMm: number;
  standardBoltArmMm?: number;
  /** Mass that hangs on it in the second test. */
  addedKg: number;
  standardAddedKg?: number;
  /** Distance of that mass aft of the bolt, and below it, in the axes of the aircraft. */
  addedAftMm: number;
  standardAddedAftMm?: number;
  addedBelowMm: number;
  standardAddedBelowMm?: number;
  /** Angles without and with the mass, tail down positive. */
  firstDeg: number;
  secondDeg: number;
  /** Of each reading, and of the error that both readings have in common. */
  standardReadingDeg?: number;
  standardZeroDeg?: number;
}

/** A centre of gravity by two hang tests. */
export interface HungCg {
  armMm: number;
  standardArmMm: number;
  /** Below the bolt. */
  depthMm: number;
  standardDepthMm: number;
}

/**
 * Returns arm and depth of the centre of gravity by two hang tests, the second with a known mass.
 *
 * H = m·(d − h·tan α₂) / (M·(tan α₂ − tan α₁))        X = x_b + H·tan α₁
 *
 * The uncertainty of H grows as 1 / (tan α₂ − tan α₁): the mass should turn the aircraft by 3° or more.
 *
 * @returns mm; undefined if the angles are equal, or if the depth is not positive
 * @source derived from statics: both times the common centre of gravity is under the bolt; checked against equilibrium
 *   found by turning the aircraft, and Monte Carlo
 */
export function hungCg(tests: HangTests): HungCg | undefined {
  const [first, second] = [Math.tan(radians(tests.firstDeg)), Math.tan(radians(tests.secondDeg))];
  const difference = second - first;
  const depthMm = (tests.addedKg * (tests.addedAftMm - tests.addedBelowMm * second)) / (tests.massKg * difference);
  if (!(Number.isFinite(depthMm) && depthMm > 0)) return undefined;
  const terms = termsOf(tests, { first, second, depthMm });
  return {
    armMm: tests.boltArmMm + depthMm * first,
    standardArmMm: Math.hypot(tests.standardBoltArmMm ?? 0, ...terms.map(({ ofArm }) => ofArm)),
    depthMm,
    standardDepthMm: Math.hypot(...terms.map(({ ofDepth }) => ofDepth)),
  };
}

/** How far the standard uncertainty of one quantity moves depth and arm. */
interface Term {
  ofDepth: number;
  ofArm: number;
}

/** Partial derivatives of H and X times the standard uncertainties; that of the bolt moves X alone and is added apart. */
function termsOf(
  tests: HangTests,
  { first, second, depthMm }: { first: number; second: number; depthMm: number },
): Term[] {
  const { massKg, addedKg, addedBelowMm } = tests;
  const difference = second - first;
  const ratio = addedKg / (massKg * difference);
  const firstPerRadian = 1 + first ** 2;
  const secondPerRadian = 1 + second ** 2;
  const byFirst = (depthMm / difference) * firstPerRadian;
  const bySecond = -(ratio * addedBelowMm + depthMm / difference) * secondPerRadian;
  const turn = depthMm * firstPerRadian;
  const term = (standard: number | undefined, ofDepth: number, turned = 0): Term => ({
    ofDepth: ofDepth * (standard ?? 0),
    ofArm: (first * ofDepth + turned) * (standard ?? 0),
  });
  const readingRad = radians(tests.standardReadingDeg ?? 0);
  return [
    term(tests.standardMassKg, -depthMm / massKg),
    term(tests.standardAddedKg, depthMm / addedKg),
    term(tests.standardAddedAftMm, ratio),
    term(tests.standardAddedBelowMm, -ratio * second),
    term(readingRad, byFirst, turn),
    term(readingRad, bySecond),
    term(radians(tests.standardZeroDeg ?? 0), byFirst + bySecond, turn),
  ];
}
