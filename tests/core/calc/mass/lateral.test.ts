import { describe, expect, test } from 'vitest';
import { lateralCg, type PlanPoint } from '../../../../worker/core/calc/mass/lateral.ts';
import { covarianceOf, expectSpread, trialsOf } from '../monte-carlo.ts';

/** Skid points of a light helicopter, the right ones on one scale; the left rear arm is known badly. */
const POINTS: readonly PlanPoint[] = [
  { massKg: 118, armMm: 1900, lateralMm: -950, scale: 'A', standardKg: 0.2, standardArmMm: 2, standardLateralMm: 3 },
  { massKg: 190, armMm: 3100, lateralMm: -950, scale: 'B', standardKg: 0.3, standardArmMm: 9, standardLateralMm: 3 },
  { massKg: 131, armMm: 1900, lateralMm: 950, scale: 'C', standardKg: 0.2, standardArmMm: 2, standardLateralMm: 4 },
  { massKg: 205, armMm: 3100, lateralMm: 950, scale: 'C', standardKg: 0.3, standardArmMm: 2, standardLateralMm: 4 },
];
const SCALES = { A: 0.4, B: 0.5, C: 0.8 };

function found(points = POINTS, scales: Record<string, number> = SCALES): NonNullable<ReturnType<typeof lateralCg>> {
  const result = lateralCg(points, scales);
  if (!result) throw new Error('the points carry a mass');
  return result;
}

describe('lateralCg()', () => {
  test('is the difference of the mains times half the track, with the third wheel on the centre line', () => {
    const points = [
      { massKg: 60, armMm: 500, lateralMm: 0, scale: 'N' },
      { massKg: 148, armMm: 2100, lateralMm: -820, scale: 'L' },
      { massKg: 156, armMm: 2100, lateralMm: 820, scale: 'R' },
    ];
    const { massKg, lateralMm } = found(points, {});
    expect(lateralMm).toBeCloseTo(((156 - 148) * 1640) / 2 / massKg, 9);
  });

  test('agrees with a Monte Carlo in both directions and in their covariance, with two points on one scale', () => {
    const trials = trialsOf((draw) => {
      const errors = new Map(Object.entries(SCALES).map(([scale, standard]) => [scale, draw.normal(standard)]));
      const drawn = POINTS.map((point) => ({
        ...point,
        massKg: point.massKg + (errors.get(point.scale) ?? 0) + draw.normal(point.standardKg ?? 0),
        armMm: point.armMm + draw.normal(point.standardArmMm ?? 0),
        lateralMm: point.lateralMm + draw.normal(point.standardLateralMm ?? 0),
      }));
      return found(drawn, {});
    });
    const [arms, laterals] = [trials.map(({ armMm }) => armMm), trials.map(({ lateralMm }) => lateralMm)];
    const { standardArmMm, standardLateralMm, covarianceMm2 } = found();
    expectSpread(arms, standardArmMm);
    expectSpread(laterals, standardLateralMm);
    // A correlation of 40 000 trials is known to 1/√40 000 = 0.005; four times that.
    const product = standardArmMm * standardLateralMm;
    expect(Math.abs(covarianceOf(arms, laterals) - covarianceMm2) / product).toBeLessThan(0.02);
    expect(Math.abs(covarianceMm2) / product).toBeGreaterThan(0.05);
  });

  test('counts one scale under two points as one error, not as two', () => {
    const apart = POINTS.map((point, index) => ({ ...point, scale: `S${index}` }));
    const each = { S0: 0.4, S1: 0.5, S2: 0.8, S3: 0.8 };
    expect(found().standardLateralMm).toBeGreaterThan(1.1 * found(apart, each).standardLateralMm);
  });

  test('does not depend on the datum', () => {
    const moved = POINTS.map((point) => ({ ...point, armMm: point.armMm + 5000, lateralMm: point.lateralMm - 300 }));
    const [near, far] = [found(), found(moved)];
    expect(far.armMm - near.armMm).toBeCloseTo(5000, 8);
    expect(far.standardArmMm).toBeCloseTo(near.standardArmMm, 9);
    expect(far.standardLateralMm).toBeCloseTo(near.standardLateralMm, 9);
    expect(far.covarianceMm2).toBeCloseTo(near.covarianceMm2, 9);
  });

  test('has no place without a mass', () => expect(lateralCg([], SCALES)).toBeUndefined());
});
