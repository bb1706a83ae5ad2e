import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acrossOf } from '../../../../worker/core/calc/lateral/across.ts';
import { lateralEmpty } from '../../../../worker/core/calc/lateral/lateral.ts';
import { equipmentChange } from '../../../../worker/core/calc/mass/equipment-change.ts';
import { lateralCg } from '../../../../worker/core/calc/mass/lateral.ts';
import { rectangular, resolution, standardErrorOfMean } from '../../../../worker/core/calc/weighing/uncertainty.ts';
import { reduceWeighing } from '../../../../worker/core/calc/weighing/weighing.ts';
import type { AsFoundLine, Change, EquipmentItem, Visit, Weighing } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const WEIGHED = readVisit('weighing-only');
const LISTED = readVisit('computed-only');

/** Weighings of the same aircraft on three points, of which some share a scale, with lateral arms known well or badly. */
const weighings = fc
  .record({
    lateralMm: fc.tuple(
      fc.integer({ min: -1200, max: -300 }),
      fc.integer({ min: 300, max: 1200 }),
      fc.integer({ min: -90, max: 90 }),
    ),
    limitMm: fc.array(fc.option(fc.integer({ min: 1, max: 12 })), { minLength: 3, maxLength: 3 }),
    scales: fc.array(fc.constantFrom('L', 'R', 'T'), { minLength: 3, maxLength: 3 }),
    tareKg: fc.array(fc.option(fc.constant(1.4)), { minLength: 3, maxLength: 3 }),
  })
  .map(({ lateralMm, limitMm, scales, tareKg }): Weighing => {
    const { weighing } = WEIGHED;
    if (!weighing) throw new Error('the visit has a weighing');
    const points = weighing.points.map((point, index): Weighing['points'][number] => ({
      ...point,
      scale: scales[index] ?? 'L',
      lateralArmMm: lateralMm[index] ?? 0,
      lateralArmLimitMm: limitMm[index] ?? undefined,
      tareKg: tareKg[index] ?? undefined,
    }));
    return { ...weighing, points, itemsAboard: undefined };
  });

describe('a weighing with lateral arms', () => {
  test('has the lateral centre of gravity of ΣR·y/ΣR, with the uncertainty of a weighing in plan', () => {
    fc.assert(
      fc.property(weighings, (weighing) => {
        const visit = { ...WEIGHED, weighing };
        const scaleOf = (id: string) => weighing.scales.find((scale) => scale.id === id);
        const points = weighing.points.map((point) => {
          const meanKg = point.readingsKg.reduce((sum, kg) => sum + kg, 0) / point.readingsKg.length;
          const stepKg = resolution(scaleOf(point.scale)?.resolutionKg ?? 0);
          return {
            massKg: meanKg - (point.tareKg ?? 0),
            armMm: point.armMm,
            lateralMm: point.lateralArmMm ?? 0,
            scale: point.scale,
            // Each reading has a step of its own, of which the mean is taken; the tare has one more.
            standardKg: Math.hypot(
              stepKg / Math.sqrt(point.readingsKg.length),
              point.tareKg === undefined ? 0 : stepKg,
              standardErrorOfMean(point.readingsKg),
            ),
            standardArmMm: rectangular(point.armLimitMm),
            standardLateralMm: rectangular(point.lateralArmLimitMm ?? point.armLimitMm),
          };
        });
        const errors = Object.fromEntries(
          weighing.scales.map(({ id, errorLimitKg }) => [id, rectangular(errorLimitKg)]),
        );
        const inPlan = lateralCg(points, errors);
        const [along, across] = [reduceWeighing(visit, weighing), lateralEmpty(visit)];
        expect(across?.basis).toBe('weighed');
        const sumKg = points.reduce((sum, { massKg }) => sum + massKg, 0);
        const direct = points.reduce((sum, { massKg, lateralMm }) => sum + massKg * lateralMm, 0) / sumKg;
        expect(across?.empty.armMm).toBeCloseTo(direct, 9);
        expect(across?.empty.armMm).toBeCloseTo(inPlan?.lateralMm ?? Number.NaN, 9);
        expect(across?.expanded?.armMm).toBeCloseTo(2 * (inPlan?.standardLateralMm ?? Number.NaN), 9);
        expect(along?.empty.armMm).toBeCloseTo(inPlan?.armMm ?? Number.NaN, 9);
        expect(along?.standard.armMm).toBeCloseTo(inPlan?.standardArmMm ?? Number.NaN, 9);
      }),
      RUNS,
    );
  });

  test('takes off what was aboard, and adds what was missing, at its lateral arm', () => {
    const { weighing } = WEIGHED;
    if (!weighing) throw new Error('the visit has a weighing');
    const points = weighing.points.map((point, index) => ({ ...point, lateralArmMm: [-700, 700, 0][index] ?? 0 }));
    const of = (changes: Partial<Weighing>) =>
      lateralEmpty({ ...WEIGHED, weighing: { ...weighing, points, itemsAboard: undefined, ...changes } })?.empty;
    const bare = of({});
    const torch = { name: 'Torch', massKg: 2, armMm: 300, lateralArmMm: -450 };
    expect((of({ itemsAboard: [torch] })?.momentKgMm ?? 0) - (bare?.momentKgMm ?? 0)).toBeCloseTo(900, 6);
    expect((of({ itemsMissing: [torch] })?.momentKgMm ?? 0) - (bare?.momentKgMm ?? 0)).toBeCloseTo(-900, 6);
  });

  test('has none without a lateral arm of any point, and that of the papers instead', () => {
    expect(lateralEmpty(WEIGHED)).toBeUndefined();
    const baseline = LISTED.baseline && { ...LISTED.baseline, emptyLateralArmMm: 4 };
    const found = lateralEmpty({ ...LISTED, modifications: [], baseline });
    expect(found).toMatchObject({ basis: 'computed', expanded: undefined, comparison: undefined });
    expect(found?.empty.armMm).toBeCloseTo(4, 12);
  });
});

const item = (id: string, massKg: number, armMm: number, lateralArmMm?: number): EquipmentItem => ({
  ...{ id, name: `Item ${id}`, massKg, armMm },
  ...(lateralArmMm !== undefined && { lateralArmMm }),
});

const masses = fc.integer({ min: 0, max: 30_000 }).map((grams) => grams / 1000);
const arms = fc.integer({ min: -1000, max: 6000 });
const laterals = fc.option(fc.integer({ min: -900, max: 900 }), { nil: undefined });
const drawn = fc.record({ massKg: masses, armMm: arms, lateralArmMm: laterals });
type Drawn = typeof drawn extends fc.Arbitrary<infer Value> ? Value : never;

function correctionOf(kind: AsFoundLine['kind'], id: string, { massKg, armMm, lateralArmMm }: Drawn): AsFoundLine {
  if (kind === 'unlisted') return { kind, ...item(`U-${id}`, massKg, armMm, lateralArmMm) };
  if (kind === 'different-mass') return { kind, item: id, massKg, armMm, lateralArmMm };
  return kind === 'missing' ? { kind, item: id } : { kind, item: id, serial: '7' };
}

function changeOf(kind: Change['kind'], id: string, { massKg, armMm, lateralArmMm }: Drawn): Change {
  const incoming = item(`N-${id}`, massKg, armMm, lateralArmMm);
  if (kind === 'installed') return { kind, ...incoming };
  if (kind === 'relocated') return { kind, item: id, armMm, lateralArmMm };
  if (kind === 'removed') return { kind, item: id, fate: 'owner' };
  if (kind === 'updated') return { kind, item: id, what: 'software', from: '1', to: '2' };
  if (kind === 'exchanged') return { kind, out: [{ item: id, fate: 'owner' }], in: [incoming] };
  return { kind, item: id, fate: 'scrapped', by: incoming };
}

/** A list of ten with lateral arms or without, corrections of its first items and changes to the others. */
const visits = fc
  .record({
    list: fc.array(drawn, { minLength: 10, maxLength: 10 }),
    corrections: fc.array(
      fc.tuple(fc.constantFrom('missing', 'different-mass', 'different-serial', 'unlisted'), drawn),
      {
        maxLength: 4,
      },
    ),
    changes: fc.array(
      fc.tuple(fc.constantFrom('removed', 'installed', 'relocated', 'replaced', 'updated', 'exchanged'), drawn),
      { maxLength: 6 },
    ),
  })
  .map(({ list, corrections, changes }): Visit => {
    const [template] = LISTED.modifications ?? [];
    if (!template || !LISTED.baseline) throw new Error('the computed-only visit has a modification and a baseline');
    const equipment = list.map(({ massKg, armMm, lateralArmMm }, index) =>
      item(`E${index}`, massKg, armMm, lateralArmMm),
    );
    return {
      ...LISTED,
      baseline: { ...LISTED.baseline, equipment, emptyLateralMomentKgMm: 0 },
      asFound: corrections.map(([kind, of], index) => correctionOf(kind, `E${index}`, of)),
      modifications: [
        { ...template, changes: changes.map(([kind, of], index) => changeOf(kind, `E${index + 4}`, of)) },
      ],
    };
  });

const lateralMoment = (items: readonly EquipmentItem[]): number =>
  items.reduce((sum, { massKg, lateralArmMm = 0 }) => sum + massKg * lateralArmMm, 0);

describe('changes of the visit, across', () => {
  test('move the lateral moment by what they move of the list, an arm that is left out staying as it was', () => {
    fc.assert(
      fc.property(visits, (visit) => {
        const { before, after } = equipmentChange(visit);
        const moved = equipmentChange(acrossOf(visit));
        expect(moved.massKg).toBeCloseTo(equipmentChange(visit).massKg, 9);
        expect(moved.momentKgMm).toBeCloseTo(lateralMoment(after) - lateralMoment(before), 4);
        expect(lateralEmpty(visit)?.empty.momentKgMm).toBeCloseTo(moved.momentKgMm, 4);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });
});
