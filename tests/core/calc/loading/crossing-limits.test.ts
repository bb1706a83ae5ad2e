import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundary, type Loading } from '../../../../worker/core/calc/loading/boundary.ts';
import { loadingExtremes } from '../../../../worker/core/calc/loading/extremes.ts';
import { loadSpaces } from '../../../../worker/core/calc/loading/load-space.ts';
import { loadingOf } from '../../../../worker/core/calc/loading/loading-of.ts';
import { judgeOf } from '../../../../worker/core/calc/loading/verdict.ts';
import { cgMm } from '../../../../worker/core/calc/mass/mass-moment.ts';
import { RUNS } from '../../../property-runs.ts';
import { crossingLoadables } from './crossing-aircraft.ts';
import { type Loadable, massAt } from './random-aircraft.ts';
import { vertexExtremes, vertexMoments } from './vertex-oracle.ts';

const extremesOf = ({ aircraft, empty }: Loadable) => loadingExtremes(aircraft, { empty, leastPilotKg: 55 });

describe('loadingExtremes() with limits that cross, conditions, external load, non-lifting parts and matched ballast', () => {
  test('agrees with brute force over every corner of every polytope', () => {
    fc.assert(
      fc.property(crossingLoadables(), (loadable) => {
        const ours = extremesOf(loadable);
        const oracle = vertexExtremes(loadable, 1);
        expect(ours === undefined).toBe(oracle === undefined);
        if (!ours || !oracle) return;
        expect(Math.abs(ours.forward.armMm - oracle.forwardMm)).toBeLessThanOrEqual(1e-6);
        expect(Math.abs(ours.aft.armMm - oracle.aftMm)).toBeLessThanOrEqual(1e-6);
      }),
      RUNS,
    );
  });

  test('follows the least and the greatest moment at every mass', () => {
    fc.assert(
      fc.property(crossingLoadables(), fc.double({ min: 0.01, max: 0.99, noNaN: true }), (loadable, share) => {
        const { aircraft, empty } = loadable;
        const massKg = empty.massKg + share * (aircraft.maximumMassKg - empty.massKg);
        const oracle = vertexMoments(loadable, massKg);
        for (const side of ['forward', 'aft'] as const) {
          const spaces = loadSpaces(aircraft, { empty, leastPilotKg: 55 });
          const found = spaces.flatMap((space) => momentAt(boundary(space, side), massKg));
          expect(found.length > 0).toBe(oracle !== undefined);
          if (!oracle) continue;
          const ours = side === 'forward' ? Math.min(...found) : Math.max(...found);
          expect(Math.abs(ours - oracle[side]) / massKg).toBeLessThanOrEqual(1e-6);
        }
      }),
      { ...RUNS, numRuns: 50 },
    );
  });

  test('gives loadings that may be flown', () => {
    fc.assert(
      fc.property(crossingLoadables(), (loadable) => {
        const { aircraft, empty } = loadable;
        const ours = extremesOf(loadable);
        for (const { loading, armMm } of ours ? [ours.forward, ours.aft] : []) {
          expect(judgeOf(aircraft)(loading)).toEqual({ state: 'inside', worst: undefined });
          expect(cgMm(loadingOf(aircraft, empty, loading.load))).toBeCloseTo(armMm, 8);
        }
      }),
      { ...RUNS, numRuns: 400 },
    );
  });

  test('lets nothing be flown beyond them', () => {
    const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 5, maxLength: 5 });
    let flown = 0;
    fc.assert(
      fc.property(
        crossingLoadables(),
        fc.array(shares, { minLength: 40, maxLength: 40 }),
        fc.array(fc.integer({ min: 0, max: 31 }), { minLength: 40, maxLength: 40 }),
        (loadable, tries, kept) => {
          const { aircraft, empty } = loadable;
          const ours = extremesOf(loadable);
          const judge = judgeOf(aircraft);
          for (const [index, share] of tries.entries()) {
            // Some stations empty, since most loads with everything aboard break a limit.
            const load = Object.fromEntries(
              aircraft.stations.map((station, at) => [
                station.id,
                massAt(station, ((kept[index] ?? 0) >> at) % 2 === 1 ? (share[at] ?? 0) : 0),
              ]),
            );
            const loading = loadingOf(aircraft, empty, load);
            if (judge(loading).state !== 'inside') continue;
            flown += 1;
            expect(cgMm(loading)).toBeGreaterThanOrEqual((ours?.forward.armMm ?? Number.NaN) - 1e-6);
            expect(cgMm(loading)).toBeLessThanOrEqual((ours?.aft.armMm ?? Number.NaN) + 1e-6);
          }
        },
      ),
      { ...RUNS, numRuns: 200 },
    );
    expect(flown).toBeGreaterThan(500);
  });
});

/** The moment of a line of loadings at a mass; none outside it. */
function momentAt(line: readonly Loading[], massKg: number): number[] {
  return line.slice(1).flatMap((to, index) => {
    const from = line[index] ?? to;
    if (massKg < from.massKg || massKg > to.massKg || from.massKg === to.massKg) return [];
    return [from.momentKgMm + ((massKg - from.massKg) / (to.massKg - from.massKg)) * (to.momentKgMm - from.momentKgMm)];
  });
}
