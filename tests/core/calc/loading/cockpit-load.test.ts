import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CockpitExtra,
  leastPilotByAftLimit,
  mostPilotByForwardLimit,
} from '../../../../worker/core/calc/loading/cockpit-load.ts';
import { atArm, cgMm, total } from '../../../../worker/core/calc/mass/mass-moment.ts';
import { RUNS } from '../../../property-runs.ts';
import { expectSpread, trialsOf } from '../monte-carlo.ts';

const EMPTY = { emptyKg: 250, emptyMomentKgMm: 250 * 620, seatArmMm: -450 };

/** Every set of masses that may be on board: each optional one there or not. */
function setsOf(extras: readonly CockpitExtra[]): CockpitExtra[][] {
  return extras.reduce<CockpitExtra[][]>(
    (sets, extra) => [...sets.map((set) => [...set, extra]), ...(extra.isOptional ? sets : [])],
    [[]],
  );
}

/** Arms of the centre of gravity with a pilot, one for every set of masses. */
const armsWith = (extras: readonly CockpitExtra[], pilotKg: number): number[] =>
  setsOf(extras).map((set) =>
    cgMm(
      total([
        { massKg: EMPTY.emptyKg, momentKgMm: EMPTY.emptyMomentKgMm },
        atArm(pilotKg, EMPTY.seatArmMm),
        ...set.map(({ massKg, armMm }) => atArm(massKg, armMm)),
      ]),
    ),
  );

const extras = fc.array(
  fc.record({
    massKg: fc.integer({ min: -8, max: 40 }),
    armMm: fc.integer({ min: -900, max: 5200 }),
    isOptional: fc.boolean(),
  }),
  { maxLength: 5 },
);

describe('a pilot of the limit', () => {
  test('keeps every set of masses ahead of the aft limit, and a lighter one does not', () => {
    fc.assert(
      fc.property(extras, fc.integer({ min: 300, max: 560 }), (list, limitArmMm) => {
        const pilot = leastPilotByAftLimit({ ...EMPTY, extras: list, limitArmMm });
        fc.pre(pilot !== undefined && pilot.massKg > 1);
        const leastKg = pilot?.massKg ?? Number.NaN;
        expect(Math.max(...armsWith(list, leastKg))).toBeCloseTo(limitArmMm, 6);
        expect(Math.max(...armsWith(list, leastKg - 0.01))).toBeGreaterThan(limitArmMm);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test('keeps every set of masses aft of the forward limit, and a heavier one does not', () => {
    fc.assert(
      fc.property(extras, fc.integer({ min: 0, max: 300 }), (list, limitArmMm) => {
        const pilot = mostPilotByForwardLimit({ ...EMPTY, extras: list, limitArmMm });
        fc.pre(pilot !== undefined && pilot.massKg > 1);
        const mostKg = pilot?.massKg ?? Number.NaN;
        expect(Math.min(...armsWith(list, mostKg))).toBeCloseTo(limitArmMm, 6);
        expect(Math.min(...armsWith(list, mostKg + 0.01))).toBeLessThan(limitArmMm);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });

  test('is not found where the seat is at the limit or aft of it', () => {
    for (const seatArmMm of [400, 500]) {
      expect(leastPilotByAftLimit({ ...EMPTY, seatArmMm, limitArmMm: 400 })).toBeUndefined();
      expect(mostPilotByForwardLimit({ ...EMPTY, seatArmMm, limitArmMm: 400 })).toBeUndefined();
    }
  });
});

describe('the uncertainty of that pilot', () => {
  /** Main wheel and tail wheel on one scale, tail water by a mark, and a person who does not sit where the manual has him. */
  const POINTS = [
    { massKg: 214, armMm: 110, standardKg: 0.15, standardArmMm: 1.5 },
    { massKg: 36, armMm: 3980, standardKg: 0.05, standardArmMm: 3 },
  ];
  const SCALE_KG = 0.12;
  const WATER = { massKg: 5, armMm: 4700, standardKg: 0.2, isOptional: true };

  const emptyOf = (points: readonly { massKg: number; armMm: number }[]) => {
    const { massKg, momentKgMm } = total(points.map(({ massKg: kg, armMm }) => atArm(kg, armMm)));
    return { emptyKg: massKg, emptyMomentKgMm: momentKgMm };
  };

  const budgetOn = (shiftMm: number) => [
    {
      standard: SCALE_KG,
      massSensitivity: POINTS.length,
      momentSensitivity: POINTS.reduce((sum, { armMm }) => sum + armMm + shiftMm, 0),
    },
    ...POINTS.flatMap(({ massKg, armMm, standardKg, standardArmMm }) => [
      { standard: standardKg, massSensitivity: 1, momentSensitivity: armMm + shiftMm },
      { standard: standardArmMm, massSensitivity: 0, momentSensitivity: massKg },
    ]),
  ];

  /** All arms from a datum that is elsewhere by some way. */
  const seatedOn = (shiftMm: number) => ({
    ...emptyOf(POINTS.map((point) => ({ ...point, armMm: point.armMm + shiftMm }))),
    seatArmMm: -480 + shiftMm,
    standardSeatArmMm: 15,
    extras: [{ ...WATER, armMm: WATER.armMm + shiftMm }],
    budget: budgetOn(shiftMm),
  });

  test.each([
    ['aft', leastPilotByAftLimit, 400],
    ['forward', mostPilotByForwardLimit, 250],
  ] as const)('agrees with a Monte Carlo at the %s limit', (_, pilotOn, limitArmMm) => {
    const trials = trialsOf((draw) => {
      const scaleKg = draw.normal(SCALE_KG);
      const points = POINTS.map(({ massKg, armMm, standardKg, standardArmMm }) => ({
        massKg: massKg + scaleKg + draw.normal(standardKg),
        armMm: armMm + draw.normal(standardArmMm),
      }));
      const extra = { ...WATER, massKg: WATER.massKg + draw.normal(WATER.standardKg) };
      const given = { ...emptyOf(points), seatArmMm: -480 + draw.normal(15), extras: [extra], limitArmMm };
      return pilotOn(given)?.massKg ?? Number.NaN;
    });
    expectSpread(trials, pilotOn({ ...seatedOn(0), limitArmMm })?.standardKg ?? Number.NaN);
  });

  test('does not depend on the datum, as it would with mass and moment taken for independent', () => {
    const [near, far] = [0, 10_000].map((shiftMm) =>
      leastPilotByAftLimit({ ...seatedOn(shiftMm), limitArmMm: 400 + shiftMm }),
    );
    expect(far?.massKg).toBeCloseTo(near?.massKg ?? Number.NaN, 8);
    expect(far?.standardKg).toBeCloseTo(near?.standardKg ?? Number.NaN, 8);
  });
});
