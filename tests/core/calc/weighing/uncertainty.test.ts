import { describe, expect, test } from 'vitest';
import {
  combine,
  meanOf,
  rectangular,
  resolution,
  standardErrorOfMean,
} from '../../../../worker/core/calc/weighing/uncertainty.ts';
import { reduceWeighing, type WeighingResult } from '../../../../worker/core/calc/weighing/weighing.ts';
import type { Visit, Weighing } from '../../../../worker/core/record/visit.ts';
import { readVisit } from '../read-visit.ts';
import { seededRandom } from '../seeded-random.ts';
import { drawnWeighing } from './drawn-weighing.ts';

function spreadOf(values: readonly number[]): number {
  const mean = meanOf(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}

function reduce(visit: Visit, weighing: Weighing): WeighingResult {
  const result = reduceWeighing(visit, weighing);
  if (!result) throw new Error('the weighing leaves a mass');
  return result;
}

const TRIALS = 40_000;
/** The spread of 40 000 trials is itself known to 1/√(2 · 40 000) = 0.35 %; four times that. */
const WITHIN = 0.015;

/** One scale under all three points, so that their errors move together. */
function onOneScale(visit: Visit): Visit {
  const { weighing } = visit;
  return weighing
    ? {
        ...visit,
        weighing: {
          ...weighing,
          points: weighing.points.map((point) => ({ ...point, scale: weighing.scales[0]?.id ?? '' })),
        },
      }
    : visit;
}

describe('reduceWeighing() first-order uncertainty agrees with a Monte Carlo of the same weighing', () => {
  const cases: [name: string, visit: Visit][] = [
    ['weighing-only', readVisit('weighing-only')],
    ['nose-wheel-full', readVisit('nose-wheel-full')],
    ['weighing-only on one scale', onOneScale(readVisit('weighing-only'))],
  ];
  for (const [name, visit] of cases) {
    test(name, () => {
      const { weighing } = visit;
      if (!weighing) throw new Error('the visit has a weighing');
      const draw = seededRandom(101);
      const trials = Array.from({ length: TRIALS }, () => reduce(visit, drawnWeighing(weighing, draw)).empty);
      const { standard } = reduce(visit, weighing);
      expect(Math.abs(spreadOf(trials.map(({ massKg }) => massKg)) / standard.massKg - 1)).toBeLessThan(WITHIN);
      expect(Math.abs(spreadOf(trials.map(({ armMm }) => armMm)) / standard.armMm - 1)).toBeLessThan(WITHIN);
    });
  }
});

describe('uncertainty of one quantity', () => {
  test('ofMean() follows s/√n, and says nothing from one reading', () => {
    // s² of 1, 2, 3, 4 is 5/3.
    expect(standardErrorOfMean([1, 2, 3, 4])).toBeCloseTo(Math.sqrt(5 / 3 / 4), 12);
    expect(standardErrorOfMean([7])).toBe(0);
    expect(standardErrorOfMean([5, 5, 5])).toBe(0);
  });

  test('ofResolution() is ofLimit() of half a step', () => {
    expect(resolution(0.5)).toBeCloseTo(rectangular(0.25), 12);
  });

  test('combine() a source at the centre of gravity moves the mass and not the centre of gravity', () => {
    const source = {
      source: 'scale',
      quantity: 'mass',
      standard: 0.3,
      massSensitivity: 1,
      momentSensitivity: 500,
    } as const;
    expect(combine([source], 300, 500)).toEqual({ massKg: 0.3, armMm: 0 });
  });
});
