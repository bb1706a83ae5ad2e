import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ACROSS, turned } from '../../../../worker/core/calc/lateral/across.ts';
import { lateralLimitsOf } from '../../../../worker/core/calc/lateral/lateral-envelope.ts';
import { lateralMargins } from '../../../../worker/core/calc/lateral/lateral-margins.ts';
import { lateralJudge } from '../../../../worker/core/calc/lateral/lateral-verdict.ts';
import { burnPathOf } from '../../../../worker/core/calc/loading/burn-path.ts';
import { loadingExtremes } from '../../../../worker/core/calc/loading/extremes.ts';
import { loadingOf } from '../../../../worker/core/calc/loading/loading-of.ts';
import { RUNS } from '../../../property-runs.ts';
import { massAt } from '../loading/random-aircraft.ts';
import {
  convexPolygons,
  insideOf,
  type LateralLoadable,
  lateralLoadables,
  type PlanMass,
  plan,
  planCorners,
} from './lateral-aircraft.ts';

const OPTIONS = { leastPilotKg: 55 };

/** Left and right limit at three masses, the lateral arm straight between. */
const limitsByMass = fc
  .record({
    middleKg: fc.integer({ min: 300, max: 450 }),
    left: fc.tuple(
      ...([0, 1, 2].map(() => fc.integer({ min: -150, max: -10 })) as [
        fc.Arbitrary<number>,
        fc.Arbitrary<number>,
        fc.Arbitrary<number>,
      ]),
    ),
    right: fc.tuple(
      ...([0, 1, 2].map(() => fc.integer({ min: 10, max: 200 })) as [
        fc.Arbitrary<number>,
        fc.Arbitrary<number>,
        fc.Arbitrary<number>,
      ]),
    ),
  })
  .map(({ middleKg, left, right }) => ({ massesKg: [100, middleKg, 900] as const, left, right }));

type ByMass = typeof limitsByMass extends fc.Arbitrary<infer Value> ? Value : never;

const stated = ({ massesKg, left, right }: ByMass) => ({
  by: 'mass' as const,
  corners: [
    ...massesKg.map((massKg, index) => ({ massKg, lateralArmMm: left[index] ?? 0 })),
    ...massesKg.map((massKg, index) => ({ massKg, lateralArmMm: right[index] ?? 0 })).reverse(),
  ],
});

function limitAt({ massesKg, ...sides }: ByMass, side: 'left' | 'right', massKg: number): number {
  const index = massKg <= massesKg[1] ? 0 : 1;
  const [from, to] = [massesKg[index] ?? 0, massesKg[index + 1] ?? 0];
  const [fromMm, toMm] = [sides[side][index] ?? 0, sides[side][index + 1] ?? 0];
  return fromMm + ((massKg - from) / (to - from)) * (toMm - fromMm);
}

const emptyAcross = ({ empty }: LateralLoadable) => ({ massKg: empty.massKg, momentKgMm: empty.lateralKgMm });

/** Values within a millionth of a millimetre. */
function expectNear(actual: number, expected: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(1e-6);
}

describe('lateral extremes and margins agree with brute force over every corner in both axes', () => {
  test('leftmost and rightmost loading', () => {
    fc.assert(
      fc.property(lateralLoadables(), (loadable) => {
        const corners = planCorners(loadable).map(({ massKg, lateralKgMm }) => lateralKgMm / massKg);
        const ours = loadingExtremes(turned(loadable.aircraft, ACROSS), { ...OPTIONS, empty: emptyAcross(loadable) });
        expect(ours === undefined).toBe(corners.length === 0);
        if (!ours) return;
        expectNear(ours.forward.armMm, Math.min(...corners));
        expectNear(ours.aft.armMm, Math.max(...corners));
      }),
      { ...RUNS, numRuns: 40 },
    );
  });

  test('the worst margin on each side of a convex area over both arms', () => {
    fc.assert(
      fc.property(lateralLoadables(), convexPolygons, fc.boolean(), (loadable, polygon, isClockwise) => {
        const corners = polygon.map(([armMm, lateralArmMm]) => ({ armMm, lateralArmMm }));
        const limits = lateralLimitsOf({ by: 'arm', corners: isClockwise ? corners.toReversed() : corners });
        const places = planCorners(loadable).map(
          ({ massKg, momentKgMm, lateralKgMm }) => [momentKgMm / massKg, lateralKgMm / massKg] as const,
        );
        if (!limits) throw new Error('a convex area is usable');
        const ours = lateralMargins(loadable.aircraft, loadable.empty, limits, OPTIONS);
        const brute =
          places.length === 0
            ? []
            : insideOf(polygon)
                .filter(({ isAcross }) => !isAcross)
                .map(({ isRight, distance }) => ({
                  side: isRight ? 'right' : 'left',
                  margin: Math.min(...places.map(([x, y]) => distance(x, y))),
                }));
        const worst = ['left', 'right'].flatMap((of) =>
          brute
            .filter(({ side }) => side === of)
            .sort((a, b) => a.margin - b.margin)
            .slice(0, 1),
        );
        expect(ours.map(({ side }) => side)).toEqual(worst.map(({ side }) => side));
        for (const [index, { margin }] of ours.entries()) expectNear(margin, worst[index]?.margin ?? Number.NaN);
      }),
      { ...RUNS, numRuns: 40 },
    );
  });

  test('margins to limits over mass', () => {
    fc.assert(
      fc.property(lateralLoadables(), limitsByMass, (loadable, byMass) => {
        const limits = lateralLimitsOf(stated(byMass));
        if (!limits) throw new Error('left and right limits bound an area');
        const ours = lateralMargins(loadable.aircraft, loadable.empty, limits, OPTIONS);
        const corners = planCorners(loadable);
        expect(ours.map(({ side }) => side)).toEqual(corners.length === 0 ? [] : ['left', 'right']);
        for (const { side, margin } of ours) {
          const found = leastMargin(corners, byMass.massesKg[1], (massKg, lateralMm) =>
            side === 'left' ? lateralMm - limitAt(byMass, side, massKg) : limitAt(byMass, side, massKg) - lateralMm,
          );
          // The sampling comes near to the worst mass, and never below it.
          expect(margin).toBeLessThanOrEqual(found + 1e-6);
          expect(margin).toBeGreaterThanOrEqual(found - 0.01);
        }
      }),
      { ...RUNS, numRuns: 40 },
    );
  });
});

/**
 * The smallest margin over a dense sampling of every line between two corners, with the mass at which limits bend: the polytope, seen
 * over mass, is the hull of its corners.
 */
function leastMargin(
  corners: readonly PlanMass[],
  bendKg: number,
  marginOf: (massKg: number, lateralMm: number) => number,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (const from of corners) {
    for (const to of corners) {
      const atBend = (bendKg - from.massKg) / (to.massKg - from.massKg);
      for (const share of [...HUNDREDTHS, ...(atBend > 0 && atBend < 1 ? [atBend] : [])]) {
        const massKg = from.massKg + (to.massKg - from.massKg) * share;
        const lateralKgMm = from.lateralKgMm + (to.lateralKgMm - from.lateralKgMm) * share;
        least = Math.min(least, marginOf(massKg, lateralKgMm / massKg));
      }
    }
  }
  return least;
}

const HUNDREDTHS = Array.from({ length: 101 }, (_, step) => step / 100);

describe('lateralJudge() agrees with the direct evaluation of a burn', () => {
  const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 5, maxLength: 5 });

  /** Every place of the centre of gravity while the one tank for fuel burns down, in steps and at one mass. */
  function burnt(
    { aircraft, empty }: LateralLoadable,
    share: readonly number[],
    { steps, atKg }: { steps: number; atKg?: number },
  ): PlanMass[] {
    const left = (of: number): PlanMass =>
      plan(aircraft.stations, empty, (index, station) => {
        const aboardKg = massAt(station, share[index] ?? 0);
        return station.kind === 'fuel' ? aboardKg * of : aboardKg;
      });
    const [full, dry] = [left(1), left(0)];
    const atMass = ((atKg ?? 0) - dry.massKg) / (full.massKg - dry.massKg);
    return [
      ...Array.from({ length: steps + 1 }, (_, step) => left(step / steps)),
      ...(atMass > 0 && atMass < 1 ? [left(atMass)] : []),
    ];
  }

  function verdictOf({ aircraft, empty }: LateralLoadable, share: readonly number[]) {
    const load = Object.fromEntries(
      aircraft.stations.map((station, index) => [station.id, massAt(station, share[index] ?? 0)]),
    );
    return lateralJudge(aircraft, empty)?.(burnPathOf(aircraft)(loadingOf(aircraft, empty, load)));
  }

  test('in a convex area over both arms', () => {
    fc.assert(
      fc.property(lateralLoadables(), convexPolygons, shares, (loadable, polygon, share) => {
        const corners = polygon.map(([armMm, lateralArmMm]) => ({ armMm, lateralArmMm }));
        const inArea = {
          ...loadable,
          aircraft: { ...loadable.aircraft, lateralEnvelope: { by: 'arm' as const, corners } },
        };
        const places = burnt(loadable, share, { steps: 50 });
        const sides = insideOf(polygon).map(({ isRight, isAcross, distance }) => ({
          side: isRight ? 'right' : 'left',
          isAcross,
          margin: Math.min(...places.map((at) => distance(at.momentKgMm / at.massKg, at.lateralKgMm / at.massKg))),
        }));
        const worst = sides.reduce((low, each) => (each.margin < low.margin ? each : low));
        const verdict = verdictOf(inArea, share);
        expectNear(verdict?.marginMm ?? Number.NaN, worst.margin);
        if (!worst.isAcross) expect(verdict?.side).toBe(worst.side);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test('between limits over mass', () => {
    fc.assert(
      fc.property(lateralLoadables(), limitsByMass, shares, (loadable, byMass, share) => {
        const inLimits = { ...loadable, aircraft: { ...loadable.aircraft, lateralEnvelope: stated(byMass) } };
        const found = burnt(loadable, share, { steps: 2000, atKg: byMass.massesKg[1] }).flatMap(
          ({ massKg, lateralKgMm }) => {
            const lateralMm = lateralKgMm / massKg;
            return [lateralMm - limitAt(byMass, 'left', massKg), limitAt(byMass, 'right', massKg) - lateralMm];
          },
        );
        const { marginMm = Number.NaN } = verdictOf(inLimits, share) ?? {};
        expect(marginMm).toBeLessThanOrEqual(Math.min(...found) + 1e-6);
        expect(marginMm).toBeGreaterThanOrEqual(Math.min(...found) - 1e-3);
      }),
      { ...RUNS, numRuns: 100 },
    );
  });

  test('has no verdict on an area that is not usable', () => {
    const unusable = [
      [
        [0, 0],
        [100, 10],
        [200, 20],
      ],
      [
        [0, -50],
        [200, -50],
        [200, 50],
        [100, 0],
        [0, 50],
      ],
    ];
    for (const corners of unusable) {
      const stated = corners.map(([armMm = 0, lateralArmMm = 0]) => ({ armMm, lateralArmMm }));
      expect(lateralLimitsOf({ by: 'arm', corners: stated })).toBeUndefined();
    }
  });
});
