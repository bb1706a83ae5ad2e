import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadingExtremes } from '../../../../worker/core/calc/loading/extremes.ts';
import { loadingOf } from '../../../../worker/core/calc/loading/loading-of.ts';
import { judgeOf } from '../../../../worker/core/calc/loading/verdict.ts';
import { cgMm } from '../../../../worker/core/calc/mass/mass-moment.ts';
import { RUNS } from '../../../property-runs.ts';
import { type Loadable, loadables, massAt } from './random-aircraft.ts';
import { vertexExtremes } from './vertex-oracle.ts';

const CASES = [
  { what: 'tanks at one arm', tanks: { fixed: 2, tabled: 0 }, steps: 1, withinMm: 1e-6 },
  // The chords of the product and the steps of the oracle each miss the parabola a little.
  { what: 'a tank with a table of arms', tanks: { fixed: 0, tabled: 1 }, steps: 48, withinMm: 0.05 },
  { what: 'a tank of each kind', tanks: { fixed: 1, tabled: 1 }, steps: 24, withinMm: 0.05 },
];

const extremesOf = ({ aircraft, empty }: Loadable) => loadingExtremes(aircraft, { empty, leastPilotKg: 55 });

describe('loadingExtremes() agrees with brute force over every corner', () => {
  for (const { what, tanks, steps, withinMm } of CASES) {
    test(`with ${what}`, () => {
      fc.assert(
        fc.property(loadables(tanks), (loadable) => {
          const ours = extremesOf(loadable);
          const oracle = vertexExtremes(loadable, steps);
          expect(ours === undefined).toBe(oracle === undefined);
          if (!ours || !oracle) return;
          expect(Math.abs(ours.forward.armMm - oracle.forwardMm)).toBeLessThanOrEqual(withinMm);
          expect(Math.abs(ours.aft.armMm - oracle.aftMm)).toBeLessThanOrEqual(withinMm);
        }),
        { ...RUNS, numRuns: tanks.tabled > 0 ? 60 : 150 },
      );
    });
  }
});

test('loadingExtremes() gives loadings that may be flown, and that make the arm they are said to make', () => {
  fc.assert(
    fc.property(loadables({ fixed: 1, tabled: 1 }), (loadable) => {
      const { aircraft, empty } = loadable;
      const ours = extremesOf(loadable);
      for (const { loading, armMm } of ours ? [ours.forward, ours.aft] : []) {
        expect(judgeOf(aircraft)(loading).state).toBe('inside');
        const again = loadingOf(aircraft, empty, loading.load);
        expect(again.massKg).toBeCloseTo(loading.massKg, 6);
        // Where a tank is filled part of the way along a chord, the loading lies on the chord and not on the parabola.
        expect(Math.abs(cgMm(again) - armMm)).toBeLessThanOrEqual(0.05);
      }
    }),
    RUNS,
  );
});

test('loadingExtremes() is at least as extreme as any legal loading tried at random', () => {
  const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 });
  fc.assert(
    fc.property(
      loadables({ fixed: 1, tabled: 1 }),
      fc.array(shares, { minLength: 40, maxLength: 40 }),
      (loadable, tries) => {
        const { aircraft, empty } = loadable;
        const ours = extremesOf(loadable);
        const judge = judgeOf(aircraft);
        for (const share of tries) {
          const load = Object.fromEntries(
            aircraft.stations.map((station, index) => [station.id, massAt(station, share[index] ?? 0)]),
          );
          const loading = loadingOf(aircraft, empty, load);
          if (judge(loading).state !== 'inside') continue;
          expect(cgMm(loading)).toBeGreaterThanOrEqual((ours?.forward.armMm ?? Number.NaN) - 0.05);
          expect(cgMm(loading)).toBeLessThanOrEqual((ours?.aft.armMm ?? Number.NaN) + 0.05);
        }
      },
    ),
    RUNS,
  );
});
