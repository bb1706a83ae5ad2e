import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Loading } from '../../../../worker/core/calc/loading/boundary.ts';
import { type EnvelopeCorner, envelopeOf } from '../../../../worker/core/calc/loading/envelope.ts';
import { type Margin, worstMargins } from '../../../../worker/core/calc/loading/margin.ts';
import { RUNS } from '../../../property-runs.ts';

const mm = fc.integer({ min: -400, max: 400 });

/** Envelopes with a bend in each limit, so that each has two sloping pieces. */
const envelopes = fc
  .record({
    low: fc.constant(300),
    high: fc.constant(600),
    bends: fc.tuple(fc.integer({ min: 320, max: 580 }), fc.integer({ min: 320, max: 580 })),
    arms: fc.tuple(mm, mm, mm, mm, mm, mm),
  })
  .map(({ low, high, bends: [forwardKg, aftKg], arms: [f1, f2, f3, a1, a2, a3] }): EnvelopeCorner[] => [
    { armMm: 1500 + f1, massKg: low },
    { armMm: 1500 + f2, massKg: forwardKg },
    { armMm: 1500 + f3, massKg: high },
    { armMm: 2400 + a3, massKg: high },
    { armMm: 2400 + a2, massKg: aftKg },
    { armMm: 2400 + a1, massKg: low },
  ]);

/** Lines of loadings along which mass rises. */
const lines = fc
  .array(fc.record({ stepKg: fc.integer({ min: 1, max: 200 }), armMm: fc.integer({ min: 500, max: 3500 }) }), {
    minLength: 1,
    maxLength: 5,
  })
  .map((steps): Loading[] => {
    const line: Loading[] = [];
    for (const { stepKg, armMm } of steps) {
      const massKg = (line.at(-1)?.massKg ?? 250) + stepKg;
      line.push({ massKg, momentKgMm: massKg * armMm, load: { place: massKg - 250 } });
    }
    return line;
  });

/** Forward and aft limit at a mass, straight from the polygon: where the level crosses its sides. */
function limitsOf(corners: readonly EnvelopeCorner[], massKg: number): { forward: number; aft: number } | undefined {
  const crossings = corners.flatMap((a, index) => {
    const b = corners[(index + 1) % corners.length] ?? a;
    const [low, high] = a.massKg < b.massKg ? [a, b] : [b, a];
    if (!(massKg >= low.massKg && massKg <= high.massKg) || low.massKg === high.massKg) return [];
    return [low.armMm + ((massKg - low.massKg) / (high.massKg - low.massKg)) * (high.armMm - low.armMm)];
  });
  return crossings.length < 2 ? undefined : { forward: Math.min(...crossings), aft: Math.max(...crossings) };
}

function marginAt(
  corners: readonly EnvelopeCorner[],
  side: 'forward' | 'aft',
  massKg: number,
  momentKgMm: number,
): number {
  const limits = limitsOf(corners, massKg);
  if (!limits) return Number.POSITIVE_INFINITY;
  const cgMm = momentKgMm / massKg;
  return side === 'forward' ? cgMm - limits.forward : limits.aft - cgMm;
}

/** The least margin of many points along a line. */
function sampled(line: readonly Loading[], corners: readonly EnvelopeCorner[], side: 'forward' | 'aft'): number {
  const pairs = line.length === 1 ? [[line[0], line[0]]] : line.slice(1).map((to, index) => [line[index], to]);
  const margins = pairs.flatMap(([from, to]) =>
    Array.from({ length: 401 }, (_, step) => {
      const at = (key: 'massKg' | 'momentKgMm'): number =>
        (from?.[key] ?? 0) + (((to?.[key] ?? 0) - (from?.[key] ?? 0)) * step) / 400;
      return marginAt(corners, side, at('massKg'), at('momentKgMm'));
    }),
  );
  return Math.min(...margins);
}

describe('worstMargins()', () => {
  test('finds nothing worse by sampling the line densely, and is reached by the loading it names', () => {
    fc.assert(
      fc.property(envelopes, lines, fc.constantFrom('forward', 'aft'), (corners, line, side) => {
        const envelope = envelopeOf(corners);
        if (!envelope) return;
        const worst = worstMargins(line, envelope, [side]).find((margin) => margin.side === side);
        const least = sampled(line, corners, side);
        if (!worst) {
          expect(least).toBe(Number.POSITIVE_INFINITY);
          return;
        }
        const { loading, margin, limit } = worst;
        expect(margin).toBeLessThanOrEqual(least + 1e-6);
        expect(marginAt(corners, side, loading.massKg, loading.momentKgMm)).toBeCloseTo(margin, 5);
        expect(limitsOf(corners, loading.massKg)?.[side]).toBeCloseTo(limit, 5);
        expect(loading.load.place).toBeCloseTo(loading.massKg - 250, 6);
      }),
      { ...RUNS, numRuns: 400 },
    );
  });

  test('finds the worst place between two corners of the line', () => {
    const envelope = envelopeOf([
      { armMm: 1300, massKg: 300 },
      { armMm: 1000, massKg: 600 },
      { armMm: 3000, massKg: 600 },
      { armMm: 3000, massKg: 300 },
    ]);
    const line = [
      { massKg: 300, momentKgMm: 490_000, load: {} },
      { massKg: 600, momentKgMm: 880_000, load: {} },
    ];
    const [worst] = envelope ? worstMargins(line, envelope, ['forward']) : [];
    // M = 100 000 + 1300·m and F = 1600 − m, so M/m − F is least where m = √100 000.
    const leastAtKg = Math.sqrt(100_000);
    expect(worst?.loading.massKg).toBeCloseTo(leastAtKg, 9);
    expect(worst?.margin).toBeCloseTo(100_000 / leastAtKg + 1300 - 1600 + leastAtKg, 9);
  });

  test('counts a mass that the envelope does not reach as outside', () => {
    const envelope = envelopeOf([
      { armMm: 1000, massKg: 300 },
      { armMm: 1000, massKg: 600 },
      { armMm: 3000, massKg: 600 },
      { armMm: 3000, massKg: 300 },
    ]);
    const at = (massKg: number): Loading => ({ massKg, momentKgMm: massKg * 2000, load: {} });
    const margins: Margin[] = envelope ? worstMargins([at(290), at(620)], envelope) : [];
    const outside = margins.filter(({ side }) => side === 'below' || side === 'above');
    expect(outside.map(({ side, margin, limit }) => [side, margin, limit])).toEqual([
      ['below', -10, 300],
      ['above', -20, 600],
    ]);
  });
});
