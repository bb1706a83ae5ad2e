import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LateralCorner, lateralMargins } from '../../../../worker/core/calc/loading/lateral-limits.ts';
import { RUNS } from '../../../property-runs.ts';
import { expectSpread, trialsOf } from '../monte-carlo.ts';

const corner = (armMm: number, lateralMm: number): LateralCorner => ({ armMm, lateralMm });

/** Unlike on both sides: wider to the left in front, and to the right behind. */
const CORNERS = [corner(2400, -90), corner(2400, 60), corner(2480, 80), corner(2560, 50), corner(2560, -40)];

/** Whether a point is in a polygon: the sides that a ray to the right crosses are odd in number. */
function isInside(corners: readonly LateralCorner[], armMm: number, lateralMm: number): boolean {
  return (
    corners.filter((a, index) => {
      const b = corners[(index + 1) % corners.length] ?? a;
      if (a.armMm > armMm === b.armMm > armMm) return false;
      return lateralMm < a.lateralMm + ((armMm - a.armMm) / (b.armMm - a.armMm)) * (b.lateralMm - a.lateralMm);
    }).length %
      2 ===
    1
  );
}

describe('lateralMargins()', () => {
  test('are both positive exactly where a count of crossed sides finds the point inside', () => {
    const places = fc.tuple(fc.integer({ min: 2380, max: 2580 }), fc.integer({ min: -120, max: 120 }));
    fc.assert(
      fc.property(places, ([arm, lateral]) => {
        const [armMm, lateralMm] = [arm + 0.37, lateral + 0.41];
        const margins = lateralMargins(CORNERS, { armMm, lateralMm });
        const isWithin = margins !== undefined && margins.left.marginMm > 0 && margins.right.marginMm > 0;
        expect(isWithin).toBe(isInside(CORNERS, armMm, lateralMm));
      }),
      { ...RUNS, numRuns: 600 },
    );
  });

  test('have the uncertainty that a Monte Carlo of a correlated place finds, on a sloping side', () => {
    const place = { armMm: 2440, lateralMm: -20, standardArmMm: 8, standardLateralMm: 5, covarianceMm2: 24 };
    const margins = lateralMargins(CORNERS, place);
    const [left, right]: [number[], number[]] = [[], []];
    trialsOf((draw) => {
      // Two independent draws, mixed so that their covariance is 8 · 3 = 24 and the second spread √(3² + 4²) = 5.
      const [common, rest] = [draw.normal(1), draw.normal(1)];
      const drawn = { armMm: place.armMm + 8 * common, lateralMm: place.lateralMm + 3 * common + 4 * rest };
      const found = lateralMargins(CORNERS, drawn);
      if (found && drawn.armMm < 2480) {
        left.push(found.left.marginMm);
        right.push(found.right.marginMm);
      }
    });
    expect(left.length).toBeGreaterThan(39_000);
    expectSpread(left, margins?.left.standardMm ?? 0);
    expectSpread(right, margins?.right.standardMm ?? 0);
  });

  test('are unknown ahead of and aft of the polygon, and without one', () => {
    expect(lateralMargins(CORNERS, { armMm: 2399, lateralMm: 0 })).toBeUndefined();
    expect(lateralMargins(CORNERS, { armMm: 2561, lateralMm: 0 })).toBeUndefined();
    expect(lateralMargins([], { armMm: 2450, lateralMm: 0 })).toBeUndefined();
  });
});
