import { describe, expect, test } from 'vitest';
import { compute } from '../../../../worker/core/calc/results.ts';
import type { MismatchCauses } from '../../../../worker/core/calc/weighing/causes/causes-result.ts';
import { chiSquareOf, covarianceOf, fitAlong } from '../../../../worker/core/calc/weighing/causes/covariance.ts';
import { slipsOf, swappedDigits } from '../../../../worker/core/calc/weighing/causes/digit-slips.ts';
import { readRecord } from '../../../../worker/core/record/read-record.ts';
import { readFixture } from '../../../read-fixture.ts';

interface Point {
  arm: number;
  tare: number;
  readings: number[];
}
interface Changed {
  weighing: { points: [Point, Point, Point]; fuelState: string };
}

const AT = '2026-11-05T14:20:00+01:00';

function causesOf(change: (record: Changed) => void): MismatchCauses {
  const record = structuredClone(readFixture('visits/nose-wheel-full')) as Changed;
  change(record);
  const read = readRecord(record);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const { causes } = compute(read.visit, { leastPilotKg: 55, standardPersonKg: 86, at: AT });
  if (!causes) throw new Error('No causes were computed');
  return causes;
}

/** Puts a mass at an arm on the scales, in their steps of 0.1 kg. */
function put({ weighing: { points } }: Changed, massKg: number, armMm: number): void {
  const [left, right, nose] = points;
  const noseKg = (massKg * (left.arm - armMm)) / (left.arm - nose.arm);
  const mainKg = (massKg - noseKg) / 2;
  for (const [point, addKg] of [
    [left, mainKg],
    [right, mainKg],
    [nose, noseKg],
  ] as const)
    point.readings = point.readings.map((readingKg) => Math.round((readingKg + addKg) * 10) / 10);
}

describe('mismatchCauses() with the visit of the demonstration', () => {
  test('needs none as it is', () => {
    const { isNeeded, causes } = causesOf(() => undefined);
    expect([isNeeded, causes]).toEqual([false, []]);
  });

  test('finds 20 l of fuel at the tank, and no place far from it', () => {
    const { causes } = causesOf((record) => put(record, 14.4, 1768));
    expect(causes.map(({ kind }) => kind)).toEqual(['fuel-more', 'loose-item']);
    expect(causes[0]?.volumeL).toBeCloseTo(20.7, 1);
    expect(causes[0]?.limitL).toBeCloseTo(1.1, 1);
    expect(causes[1]?.of).toBe('Left seat');
  });

  test('finds oil that was out', () => {
    const { causes } = causesOf((record) => put(record, -2.7, 260));
    expect(causes.map(({ kind }) => kind)).toEqual(['oil-out']);
    expect(causes[0]?.massKg).toBeCloseTo(-2.4, 1);
  });

  test('finds tare first if it was left out', () => {
    const { causes } = causesOf(({ weighing: { points } }) => {
      for (const point of points) point.tare = 0;
    });
    expect(causes[0]).toMatchObject({ kind: 'tare-forgotten', of: undefined });
    expect(causes[0]?.massKg).toBeCloseTo(2.6, 1);
  });

  test('finds swapped digits in every run of a point', () => {
    const { causes } = causesOf(({ weighing: { points } }) => {
      points[0].readings = [112.4, 112.5, 112.3];
    });
    expect(causes).toHaveLength(1);
    expect(causes[0]).toMatchObject({ kind: 'reading-slip', of: 'Left main' });
    expect(causes[0]?.recorded?.instead).toBeCloseTo(121.4);
  });

  test('finds readings at the wrong point', () => {
    const { causes } = causesOf(({ weighing: { points } }) => {
      [points[0].readings, points[2].readings] = [points[2].readings, points[0].readings];
    });
    expect(causes[0]).toMatchObject({ kind: 'points-exchanged', of: 'Left main', and: 'Nose' });
  });

  test('finds the arm of both mains with swapped digits, and of the nose with a wrong sign', () => {
    const mains = causesOf(({ weighing: { points } }) => {
      points[0].arm = 1892;
      points[1].arm = 1892;
    });
    expect(mains.causes[0]).toMatchObject({ kind: 'point-arm-slip', of: 'Left main', and: 'Right main' });
    expect(mains.causes[0]?.recorded?.instead).toBe(1982);
    const nose = causesOf(({ weighing: { points } }) => {
      points[2].arm = -722;
    });
    expect(nose.causes.map(({ recorded }) => recorded?.instead)).toEqual([722]);
  });

  test('finds full tanks that were dry', () => {
    const { causes } = causesOf(({ weighing }) => {
      weighing.fuelState = 'full';
    });
    expect(causes.map(({ kind }) => kind)).toEqual(['fuel-less']);
    expect(causes[0]?.volumeL).toBeCloseTo(-77.3, 1);
  });

  test('finds pounds', () => {
    const { causes } = causesOf(({ weighing: { points } }) => {
      for (const point of points) {
        point.readings = point.readings.map((readingKg) => readingKg * 2.2046);
        point.tare *= 2.2046;
      }
    });
    expect(causes.map(({ kind }) => kind)).toEqual(['pounds-for-kilograms']);
  });

  test('finds a loose bag, with the place of the missing mass', () => {
    const { causes, missing } = causesOf((record) => put(record, 20, 2440));
    expect(causes.map(({ of }) => of)).toEqual(['Baggage bay']);
    expect(Math.abs((missing?.armMm ?? 0) - 2440)).toBeLessThan(missing?.limitMm ?? 0);
  });

  test('names nothing if no place of the aircraft fits, only where the mass is missing', () => {
    const { isNeeded, causes, missing } = causesOf((record) => put(record, 14, 4300));
    expect([isNeeded, causes]).toEqual([true, []]);
    expect(missing?.massKg).toBeCloseTo(14.5, 0);
  });
});

describe('chiSquareOf() and fitAlong()', () => {
  const covariance = covarianceOf([
    { standard: 0.5, massSensitivity: 1, momentSensitivity: 2000 },
    { standard: 2, massSensitivity: 0, momentSensitivity: 300 },
  ]);

  test('a mass at the arm of its own uncertainty is as far as its multiple of it', () => {
    expect(chiSquareOf(covariance, { massKg: 1, momentKgMm: 2000 })).toBeCloseTo(4);
  });

  test('a mass at a known arm is found without a rest', () => {
    const fit = fitAlong(covariance, { massKg: 3, momentKgMm: 4500 }, { massKg: 1, momentKgMm: 1500 });
    expect(fit.size).toBeCloseTo(3);
    expect(fit.chiSquare).toBeCloseTo(0);
  });
});

test('slips of a displayed number are neighbouring digits swapped, or its point moved', () => {
  expect([...swappedDigits(121.4, 0.1).values()]).toEqual([211.4, 112.4, 124.1]);
  expect(slipsOf(121.5, 0.1).get('p10')).toBe(1215);
  expect([...swappedDigits(-11.0, 0.1).values()]).toEqual([-10.1]);
});
