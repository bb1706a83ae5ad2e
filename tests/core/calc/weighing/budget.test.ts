import { describe, expect, test } from 'vitest';
import { acrossOf } from '../../../../worker/core/calc/lateral/across.ts';
import { fuelErrorArmMm } from '../../../../worker/core/calc/loading/fuel.ts';
import { combine } from '../../../../worker/core/calc/weighing/uncertainty.ts';
import { reduceWeighing, type WeighingResult } from '../../../../worker/core/calc/weighing/weighing.ts';
import type { Aircraft, FuelStation, Visit, Weighing } from '../../../../worker/core/record/visit.ts';
import { expectSpread, spreadOf, trialsOf } from '../monte-carlo.ts';
import { readVisit } from '../read-visit.ts';
import { drawnWeighing } from './drawn-weighing.ts';

const VISIT = readVisit('weighing-only');
const DEGREE = Math.PI / 180;

function weighingWith(changes: Partial<Weighing>): Weighing {
  if (!VISIT.weighing) throw new Error('the visit has a weighing');
  return { ...VISIT.weighing, ...changes };
}

function reduce(visit: Pick<Visit, 'aircraft'>, weighing: Weighing): WeighingResult {
  const result = reduceWeighing(visit, weighing);
  if (!result) throw new Error('the weighing leaves a mass');
  return result;
}

const LEVEL = { longitudinalDeg: 0.3, lateralDeg: -0.1, limitDeg: 0.2 };
const ATTITUDE = { longitudinalDeg: -0.4, lateralDeg: 0, source: 'Manual' };

describe('reduceWeighing() has the uncertainty of a Monte Carlo of levelling and oil', () => {
  const cases: [name: string, weighing: Weighing, aircraft: Aircraft, offDeg: number][] = [
    ['level read as off', weighingWith({ level: LEVEL, cgHeightMm: 900 }), VISIT.aircraft, 0.5],
    [
      'attitude of its own',
      weighingWith({ level: LEVEL, cgHeightMm: 900 }),
      { ...VISIT.aircraft, levelAttitude: ATTITUDE },
      0.9,
    ],
    ['hung from above', weighingWith({ level: LEVEL, cgHeightMm: -1400 }), VISIT.aircraft, 0.5],
    ['oil', weighingWith({ oilMassLimitKg: 1.5, oilArmMm: -900 }), VISIT.aircraft, 0],
    ['both', weighingWith({ level: LEVEL, cgHeightMm: 900, oilMassLimitKg: 1.5, oilArmMm: -900 }), VISIT.aircraft, 0.5],
  ];

  test.each(cases)('%s', (_, weighing, aircraft, offDeg) => {
    const { cgHeightMm = 0, oilMassLimitKg = 0, oilArmMm = 0 } = weighing;
    const trials = trialsOf((draw) => {
      const { asWeighed, empty } = reduce({ aircraft }, drawnWeighing(weighing, draw));
      // The attitude is somewhere within what was read and the error of the level; the oil within its limit.
      const turnedMm = cgHeightMm * Math.tan(draw.uniform(offDeg) * DEGREE);
      const oilKg = draw.uniform(oilMassLimitKg);
      const massKg = empty.massKg + oilKg;
      return { massKg, armMm: (empty.momentKgMm + turnedMm * asWeighed.massKg + oilKg * oilArmMm) / massKg };
    });
    const { standard } = reduce({ aircraft }, weighing);
    expectSpread(
      trials.map(({ massKg }) => massKg),
      standard.massKg,
    );
    expectSpread(
      trials.map(({ armMm }) => armMm),
      standard.armMm,
    );
  });

  test('across, by the lateral angle, and oil on the centre line', () => {
    const points = VISIT.weighing?.points.map((point, index) => ({
      ...point,
      lateralArmMm: [-900, 900, 0][index] ?? 0,
    }));
    const weighing = weighingWith({
      level: LEVEL,
      cgHeightMm: 900,
      oilMassLimitKg: 1.5,
      oilArmMm: -900,
      points: points ?? [],
    });
    const across = acrossOf({ ...VISIT, weighing });
    if (!across.weighing) throw new Error('the visit has a weighing');
    const seen = across.weighing;
    const trials = trialsOf((draw) => {
      const { asWeighed, empty } = reduce(across, drawnWeighing(seen, draw));
      const turnedMm = 900 * Math.tan(draw.uniform(0.3) * DEGREE);
      return (empty.momentKgMm + turnedMm * asWeighed.massKg) / (empty.massKg + draw.uniform(1.5));
    });
    expectSpread(trials, reduce(across, seen).standard.armMm);
  });

  test('does not count levelling without a height, or at the attitude itself with a perfect level', () => {
    const kinds = (changes: Partial<Weighing>, aircraft = VISIT.aircraft) =>
      reduce({ aircraft }, weighingWith(changes)).budget.map(({ component }) => component.kind);
    expect(kinds({ level: LEVEL })).not.toContain('levelling');
    const exactly = { level: { longitudinalDeg: -0.4, lateralDeg: 0 }, cgHeightMm: 900 };
    expect(kinds(exactly)).toContain('levelling');
    expect(kinds(exactly, { ...VISIT.aircraft, levelAttitude: ATTITUDE })).not.toContain('levelling');
    expect(kinds({ oilMassLimitKg: 1 })).not.toContain('oil-level');
  });
});

describe('fuelErrorArmMm() is the arm of an error of the content, on steep tables', () => {
  /** The arm of the whole content moves by 10 mm for a litre from 60 l on, and falls by 8 mm for a litre from 100 l on. */
  const TANK: FuelStation = {
    ...{ id: 'wing-tank', name: 'Wing tank', kind: 'fuel', unusableL: 2, densityKgPerL: 0.72, capacityL: 120 },
    armByVolume: [
      { volumeL: 0, armMm: 1200 },
      { volumeL: 60, armMm: 1200 },
      { volumeL: 100, armMm: 1600 },
      { volumeL: 120, armMm: 1440 },
    ],
  };
  const aircraft = {
    ...VISIT.aircraft,
    stations: [...VISIT.aircraft.stations.filter(({ id }) => id !== TANK.id), TANK],
  };
  const stated = (volumeL: number, volumeLimitL: number): Weighing =>
    weighingWith({ fuelState: 'stated', fuelAboard: [{ station: TANK.id, volumeL, volumeLimitL }] });

  // On a line itself the error bends: first order leaves out half the change of the slope times a/√12, 900 mm at 100 l.
  test.each([
    { volumeL: 20, within: 0.02 },
    { volumeL: 60, within: 0.02 },
    { volumeL: 61.5, within: 0.02 },
    { volumeL: 80, within: 0.02 },
    { volumeL: 100, within: 0.03 },
    { volumeL: 110, within: 0.02 },
  ])('a weighing with $volumeL l has the spread of a Monte Carlo', ({ volumeL, within }) => {
    const trials = trialsOf(
      (draw) => reduce({ aircraft }, drawnWeighing(stated(volumeL + draw.uniform(2), 2), draw)).empty,
    );
    const { standard } = reduce({ aircraft }, stated(volumeL, 2));
    expectSpread(
      trials.map(({ massKg }) => massKg),
      standard.massKg,
    );
    expect(Math.abs(spreadOf(trials.map(({ armMm }) => armMm)) / standard.armMm - 1)).toBeLessThan(within);
  });

  test('would miss it by a third if the error acted at the arm of all the content', () => {
    const trials = trialsOf((draw) => reduce({ aircraft }, drawnWeighing(stated(80 + draw.uniform(2), 2), draw)).empty);
    const { budget, empty } = reduce({ aircraft }, stated(80, 2));
    const atItsArm = budget.map((each) =>
      each.component.kind === 'mass-as-stated' && each.component.line.kind === 'stated-fuel'
        ? { ...each, momentSensitivity: 1400 }
        : each,
    );
    const wrong = combine(atItsArm, empty.massKg, empty.armMm).armMm;
    expect(spreadOf(trials.map(({ armMm }) => armMm)) / wrong - 1).toBeGreaterThan(0.3);
  });

  test('is the slope of the moment, and on a line of the table the mean of both', () => {
    expect(fuelErrorArmMm(TANK, 30)).toBeCloseTo(1200, 3);
    // d(V·(1200 + 10·(V − 60)))/dV = 1200 + 10·(V − 60) + 10·V
    expect(fuelErrorArmMm(TANK, 80)).toBeCloseTo(1400 + 800, 3);
    expect(fuelErrorArmMm(TANK, 60)).toBeCloseTo((1200 + 1800) / 2, 2);
  });
});
