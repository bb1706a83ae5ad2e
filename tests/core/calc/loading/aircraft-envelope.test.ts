import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { envelopeCorners, envelopeIn } from '../../../../worker/core/calc/loading/aircraft-envelope.ts';
import { armOn, type Envelope } from '../../../../worker/core/calc/loading/envelope.ts';
import { loadingExtremes } from '../../../../worker/core/calc/loading/extremes.ts';
import { loadingOf } from '../../../../worker/core/calc/loading/loading-of.ts';
import { judgeOf } from '../../../../worker/core/calc/loading/verdict.ts';
import { cgMm } from '../../../../worker/core/calc/mass/mass-moment.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';
import { loadables, massAt } from './random-aircraft.ts';

const { aircraft } = readVisit('computed-only');
const MAC = { leadingEdgeArmMm: -120, lengthMm: 1300 };

interface Limits {
  massesKg: number[];
  forwardMm: number[];
  aftMm: number[];
}

/** Forward and aft limits at two to five masses, straight between. */
const limits: fc.Arbitrary<Limits> = fc
  .integer({ min: 2, max: 5 })
  .chain((levels) =>
    fc.record({
      stepsKg: fc.array(fc.integer({ min: 10, max: 120 }), { minLength: levels - 1, maxLength: levels - 1 }),
      forwardMm: fc.array(fc.integer({ min: 100, max: 400 }), { minLength: levels, maxLength: levels }),
      aftMm: fc.array(fc.integer({ min: 401, max: 900 }), { minLength: levels, maxLength: levels }),
    }),
  )
  .map(({ stepsKg, forwardMm, aftMm }) => ({
    massesKg: [0, ...stepsKg].map((_, index) => stepsKg.slice(0, index).reduce((sum, step) => sum + step, 280)),
    forwardMm,
    aftMm,
  }));

/** The corners round the area: up the forward side, down the aft side. */
const cornersOf = ({ massesKg, forwardMm, aftMm }: Limits) => [
  ...massesKg.map((massKg, index) => ({ massKg, armMm: forwardMm[index] ?? 0 })),
  ...massesKg.map((massKg, index) => ({ massKg, armMm: aftMm[index] ?? 0 })).reverse(),
];

/** One side as equations, each stated at a mass of its own choosing. */
function equationsOf(massesKg: readonly number[], armsMm: readonly number[], shares: readonly number[]) {
  return massesKg.slice(1).map((toMassKg, index) => {
    const [fromMassKg = 0, fromMm = 0, toMm = 0] = [massesKg[index], armsMm[index], armsMm[index + 1]];
    const atMassKg = fromMassKg + (shares[index] ?? 0) * (toMassKg - fromMassKg);
    const armMm = fromMm + (shares[index] ?? 0) * (toMm - fromMm);
    const slope = { armChangeMm: (100 * (toMm - fromMm)) / (toMassKg - fromMassKg), perMassKg: 100 };
    return { fromMassKg, toMassKg, armMm, atMassKg, ...(toMm !== fromMm && slope) };
  });
}

const limitAt = (envelope: Envelope | undefined, side: 'forward' | 'aft', massKg: number): number => {
  const piece = envelope?.reach[side].find(({ fromKg, toKg }) => massKg >= fromKg && massKg <= toKg);
  return piece ? armOn(piece, massKg) : Number.NaN;
};

const shares = fc.array(fc.double({ min: -1, max: 2, noNaN: true }), { minLength: 4, maxLength: 4 });

describe('envelopeIn()', () => {
  test('by per cent of chord is the envelope by the arms that they are', () => {
    fc.assert(
      fc.property(limits, fc.array(fc.boolean(), { minLength: 10, maxLength: 10 }), (of, asChord) => {
        const corners = cornersOf(of);
        const envelope = corners.map(({ massKg, armMm }, index) =>
          asChord[index]
            ? { massKg, chordPercent: (100 * (armMm - MAC.leadingEdgeArmMm)) / MAC.lengthMm }
            : { massKg, armMm },
        );
        const found = envelopeIn({ envelope, mac: MAC });
        const byArms = envelopeIn({ envelope: corners });
        for (const massKg of of.massesKg)
          for (const side of ['forward', 'aft'] as const)
            expect(limitAt(found, side, massKg)).toBeCloseTo(limitAt(byArms, side, massKg), 9);
        for (const [index, { armMm }] of (envelopeCorners({ envelope, mac: MAC }) ?? []).entries())
          expect(armMm).toBeCloseTo(corners[index]?.armMm ?? Number.NaN, 9);
      }),
      RUNS,
    );
  });

  test('by per cent of chord is none without the chord, and none with a corner that has neither', () => {
    const corners = [
      { massKg: 300, chordPercent: 20 },
      { massKg: 450, chordPercent: 22 },
      { massKg: 450, chordPercent: 35 },
    ];
    expect(envelopeIn({ envelope: corners })).toBeUndefined();
    expect(envelopeIn({ envelope: [...corners, { massKg: 300 }], mac: MAC })).toBeUndefined();
    expect(envelopeIn({ envelope: corners, mac: MAC })).toBeDefined();
    expect(envelopeIn({})).toBeUndefined();
  });

  test('by equations in any order is the envelope by its corners', () => {
    fc.assert(
      fc.property(limits, shares, shares, fc.boolean(), (of, ahead, behind, isTurned) => {
        const [forward, aft] = [
          equationsOf(of.massesKg, of.forwardMm, ahead),
          equationsOf(of.massesKg, of.aftMm, behind),
        ];
        const stated = { envelopeEquations: { forward: isTurned ? forward.toReversed() : forward, aft } };
        const [found, byCorners] = [envelopeIn(stated), envelopeIn({ envelope: cornersOf(of) })];
        expect([found?.lowestKg, found?.highestKg]).toEqual([byCorners?.lowestKg, byCorners?.highestKg]);
        for (const [index, massKg] of of.massesKg.entries()) {
          const betweenKg = (massKg + (of.massesKg[index + 1] ?? massKg)) / 2;
          for (const side of ['forward', 'aft'] as const)
            for (const at of [massKg, betweenKg])
              expect(limitAt(found, side, at)).toBeCloseTo(limitAt(byCorners, side, at), 6);
        }
        // Round the area again, and every corner of the drawing is among them.
        const round = envelopeCorners(stated) ?? [];
        for (const { massKg, armMm } of cornersOf(of))
          expect(round.some((each) => each.massKg === massKg && Math.abs(each.armMm - armMm) < 1e-6)).toBe(true);
      }),
      RUNS,
    );
  });

  test('by equations is none where pieces leave a gap, overlap, or the sides end apart or cross', () => {
    const piece = (fromMassKg: number, toMassKg: number, armMm: number) => ({
      fromMassKg,
      toMassKg,
      armMm,
      atMassKg: fromMassKg,
    });
    const by = (forward: ReturnType<typeof piece>[], aft: ReturnType<typeof piece>[]) =>
      envelopeIn({ envelopeEquations: { forward, aft } });
    const aft = [piece(300, 450, 500)];
    expect(by([piece(300, 400, 200), piece(400, 450, 250)], aft)).toBeDefined();
    expect(by([piece(300, 390, 200), piece(400, 450, 250)], aft)).toBeUndefined();
    expect(by([piece(300, 410, 200), piece(400, 450, 250)], aft)).toBeUndefined();
    expect(by([piece(300, 460, 200)], aft)).toBeUndefined();
    expect(by([piece(310, 450, 200)], aft)).toBeUndefined();
    expect(by([piece(300, 300, 200), piece(300, 450, 200)], aft)).toBeUndefined();
    expect(by([piece(300, 400, 200), piece(400, 450, 510)], aft)).toBeUndefined();
  });
});

describe('a lower edge that is only the end of the drawing', () => {
  const [low, high] = [400, 600];
  const corners = cornersOf({ massesKg: [low, 500, high], forwardMm: [250, 260, 300], aftMm: [420, 460, 450] });
  const drawn = { envelope: corners, envelopeLowerEdge: 'end-of-drawing' as const };

  test('continues both limits straight down, and none up', () => {
    const envelope = envelopeIn(drawn);
    for (const massKg of [1, 150, 399, 400])
      expect([limitAt(envelope, 'forward', massKg), limitAt(envelope, 'aft', massKg)]).toEqual([250, 420]);
    expect(limitAt(envelope, 'aft', 601)).toBeNaN();
    expect(limitAt(envelopeIn({ envelope: corners }), 'aft', 399)).toBeNaN();
  });

  test('lets a lighter loading be inside, and holds it to those limits', () => {
    const judge = (limits: typeof drawn | { envelope: typeof corners }, armMm: number) =>
      judgeOf(aircraft, { envelope: envelopeIn(limits) })(
        loadingOf(aircraft, { massKg: 250, momentKgMm: 250 * armMm }, { 'left-seat': 70 }),
      );
    // 320 kg, with the pilot at 420 mm.
    expect(judge(drawn, 300)).toMatchObject({ state: 'inside', worst: { side: 'forward', limit: 250 } });
    expect(judge({ envelope: corners }, 300)).toMatchObject({ state: 'outside', worst: { side: 'below' } });
    const foremost = judge(drawn, 200);
    expect(foremost).toMatchObject({ state: 'outside', worst: { side: 'forward', limit: 250 } });
    expect('worst' in foremost && foremost.worst?.margin).toBeCloseTo((250 * 200 + 70 * 420) / 320 - 250, 9);
  });

  test('gives margins of all loadings that no loading tried at random falls short of', () => {
    const tries = fc.array(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }), {
      minLength: 40,
      maxLength: 40,
    });
    let lighter = 0;
    fc.assert(
      fc.property(loadables({ fixed: 1, tabled: 0 }), tries, (loadable, drawnShares) => {
        const { empty } = loadable;
        const within = {
          ...loadable.aircraft,
          ...drawn,
          maximumMassKg: Math.min(high, loadable.aircraft.maximumMassKg),
        };
        const envelope = envelopeIn(within);
        const ours = loadingExtremes(within, { empty, leastPilotKg: 55 }, envelope);
        expect(ours?.margins.map(({ side }) => side) ?? []).toEqual(ours ? ['forward', 'aft'] : []);
        const judge = judgeOf(within);
        for (const share of drawnShares) {
          const load = Object.fromEntries(
            within.stations.map((station, index) => [station.id, massAt(station, share[index] ?? 0)]),
          );
          const loading = loadingOf(within, empty, load);
          if (judge(loading).state !== 'inside') continue;
          lighter += Number(loading.massKg < low);
          for (const { side, margin } of ours?.margins ?? []) {
            if (side !== 'forward' && side !== 'aft') continue;
            const limitMm = limitAt(envelope, side, loading.massKg);
            const its = side === 'forward' ? cgMm(loading) - limitMm : limitMm - cgMm(loading);
            expect(its).toBeGreaterThanOrEqual(margin - 1e-6);
          }
        }
      }),
      RUNS,
    );
    expect(lighter).toBeGreaterThan(100);
  });
});
