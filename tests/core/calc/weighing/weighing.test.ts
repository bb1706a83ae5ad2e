import { describe, expect, test } from 'vitest';
import {
  reduceWeighing,
  scaleCorrectionKg,
  type WeighingResult,
} from '../../../../worker/core/calc/weighing/weighing.ts';
import type { Visit, Weighing } from '../../../../worker/core/record/visit.ts';
import { readVisit } from '../read-visit.ts';

const FULL = readVisit('nose-wheel-full');
const TAIL = readVisit('weighing-only');

function reduce(visit: Visit, changes: Partial<Weighing> = {}): WeighingResult {
  const result = visit.weighing && reduceWeighing(visit, { ...visit.weighing, ...changes });
  if (!result) throw new Error('the visit has a weighing that leaves a mass');
  return result;
}

describe('reduceWeighing()', () => {
  test('takes off tare and adds the correction of the certificate, run by run', () => {
    const [left] = reduce(FULL).points;
    // 121.4 kg lies 21.4 % of the way from 100 kg (+0.05) to 200 kg (+0.1).
    expect(left?.runs[0]?.correctionKg).toBeCloseTo(0.0607, 10);
    expect(left?.runs[0]?.netKg).toBeCloseTo(121.4 + 0.0607 - 0.8, 10);
    expect(left?.spreadKg).toBeCloseTo(0.2001, 10);
  });

  test('applies the corrections of a certificate that is listed from the top', () => {
    // 357.5 lb of 1000 lb, where the certificate adds 2 lb: 0.715 lb.
    const lb = 0.45359237;
    const corrections = [
      { readingKg: 1000 * lb, addKg: 2 * lb },
      { readingKg: 0, addKg: 0 },
    ];
    const scales = (TAIL.weighing?.scales ?? []).map((scale) => (scale.id === 'L' ? { ...scale, corrections } : scale));
    const [left] = reduce(TAIL, { scales }).points;
    expect((left?.runs[0]?.correctionKg ?? 0) / lb).toBeCloseTo(0.715, 10);
  });

  test('gives no result where a point has no reading', () => {
    const points = (FULL.weighing?.points ?? []).map((point) => ({ ...point, readingsKg: [] }));
    expect(FULL.weighing && reduceWeighing(FULL, { ...FULL.weighing, points })).toBeUndefined();
  });

  test('takes off what was aboard and is no part of it', () => {
    const { asWeighed, empty } = reduce(FULL);
    expect(asWeighed.massKg - empty.massKg).toBeCloseTo(0.4, 10);
    expect(asWeighed.momentKgMm - empty.momentKgMm).toBeCloseTo(0.4 * 1900, 6);
  });

  test('adds what is missing', () => {
    const oil = { name: 'Oil', massKg: 2.5, armMm: 300 };
    const { empty, adjustments } = reduce(FULL, { itemsMissing: [oil] });
    expect(empty.massKg - reduce(FULL).empty.massKg).toBeCloseTo(2.5, 10);
    expect(adjustments.map(({ pointer }) => pointer)).toEqual(['/weighing/itemsAboard/0', '/weighing/itemsMissing/0']);
  });

  test('gives the total of every run, and none where the points have different numbers of runs', () => {
    const { runTotalsKg, asWeighed } = reduce(TAIL);
    expect(runTotalsKg).toHaveLength(3);
    expect(runTotalsKg.reduce((sum, value) => sum + value, 0) / 3).toBeCloseTo(asWeighed.massKg, 9);
    const [first, ...rest] = TAIL.weighing?.points ?? [];
    const uneven = first ? [{ ...first, readingsKg: [160] }, ...rest] : [];
    expect(reduce(TAIL, { points: uneven }).runTotalsKg).toEqual([]);
  });

  test('the expanded uncertainty is twice the standard one', () => {
    const { standard, expanded } = reduce(TAIL);
    expect(expanded).toEqual({ massKg: 2 * standard.massKg, armMm: 2 * standard.armMm });
  });
});

describe('reduceWeighing() fuel', () => {
  // Two tanks: 8 and 12 US gal, of which 0.2 and 0.3 unusable, at 6 lb/US gal, −9.5 and 14.5 in.
  const lb = 0.45359237;
  const inch = 25.4;
  const drained = reduce(TAIL).empty;

  test('a content stated as exactly the unusable takes nothing off, and keeps its limit of error', () => {
    const stated = (first: number, second: number) =>
      reduce(TAIL, {
        fuelState: 'stated',
        fuelAboard: [
          { station: 'header-tank', volumeL: first * 3.785411784, volumeLimitL: 0.5 * 3.785411784 },
          { station: 'wing-tank', volumeL: second * 3.785411784, volumeLimitL: 0.5 * 3.785411784 },
        ],
      });
    const [exactly, nearly] = [stated(0.2, 0.3), stated(0.2001, 0.3001)];
    expect(exactly.empty.massKg).toBeCloseTo(drained.massKg, 9);
    expect(exactly.empty.armMm).toBeCloseTo(drained.armMm, 9);
    // Half a gallon of 6 lb each way, evenly likely, of two tanks: u = 3 lb / √3 each, besides what the scales give.
    const fuelOnly = Math.sqrt(exactly.standard.massKg ** 2 - reduce(TAIL).standard.massKg ** 2);
    expect(fuelOnly / lb).toBeCloseTo(Math.sqrt(2) * Math.sqrt(3), 6);
    expect(exactly.standard.massKg).toBeCloseTo(nearly.standard.massKg, 9);
    expect(exactly.standard.armMm).toBeCloseTo(nearly.standard.armMm, 2);
  });

  test('full tanks: the usable part comes off', () => {
    const { empty } = reduce(TAIL, { fuelState: 'full' });
    expect(drained.massKg - empty.massKg).toBeCloseTo((7.8 + 11.7) * 6 * lb, 9);
    expect(drained.momentKgMm - empty.momentKgMm).toBeCloseTo((7.8 * -9.5 + 11.7 * 14.5) * 6 * lb * inch, 6);
  });

  test('dry tanks: the unusable part goes on', () => {
    const { empty } = reduce(TAIL, { fuelState: 'dry' });
    expect(empty.massKg - drained.massKg).toBeCloseTo(0.5 * 6 * lb, 9);
    expect(empty.momentKgMm - drained.momentKgMm).toBeCloseTo((0.2 * -9.5 + 0.3 * 14.5) * 6 * lb * inch, 6);
  });

  test('stated contents: full tanks so stated give the same as full', () => {
    const l = 3.785411784;
    const fuelAboard = [
      { station: 'header-tank', volumeL: 8 * l },
      { station: 'wing-tank', volumeL: 12 * l },
    ];
    const stated = reduce(TAIL, { fuelState: 'stated', fuelAboard }).empty;
    const full = reduce(TAIL, { fuelState: 'full' }).empty;
    expect(stated.massKg).toBeCloseTo(full.massKg, 9);
    expect(stated.momentKgMm).toBeCloseTo(full.momentKgMm, 6);
  });

  test('stated contents below the unusable: the rest of the unusable goes on', () => {
    const fuelAboard = [{ station: 'wing-tank', volumeL: 0 }];
    const { empty } = reduce(TAIL, { fuelState: 'stated', fuelAboard });
    expect(empty.massKg - drained.massKg).toBeCloseTo(0.3 * 6 * lb, 9);
  });

  test('stated contents: their limit of error enters the budget', () => {
    const fuelAboard = [{ station: 'wing-tank', volumeL: 20, volumeLimitL: 2 }];
    const { budget } = reduce(TAIL, { fuelState: 'stated', fuelAboard });
    const density = (6 * lb) / 3.785411784;
    expect(budget.at(-1)?.standard).toBeCloseTo((2 * density) / Math.sqrt(3), 9);
  });
});

test('reduceWeighing() a tail that is held down reads negative and moves the centre of gravity forward', () => {
  const points = TAIL.weighing?.points.map((point) =>
    point.id === 'tail' ? { ...point, tareKg: 0, readingsKg: point.readingsKg.map((value) => -value / 10) } : point,
  );
  const { empty } = reduce(TAIL, { points: points ?? [] });
  expect(empty.armMm).toBeLessThan(1.6 * 25.4);
});

test('scaleCorrectionKg() holds the first and the last line outside the certificate, and is nothing without one', () => {
  const [scale] = FULL.weighing?.scales ?? [];
  expect([-5, 0, 50, 200, 400].map((reading) => scaleCorrectionKg(scale, reading))).toEqual([0, 0, 0.025, 0.1, 0.1]);
  expect(scaleCorrectionKg(undefined, 100)).toBe(0);
});
