import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ConfigurationEmpty,
  configurationEmpties,
} from '../../../../worker/core/calc/configurations/configuration-empty.ts';
import { acrossOf } from '../../../../worker/core/calc/lateral/across.ts';
import { equipmentChange } from '../../../../worker/core/calc/mass/equipment-change.ts';
import type { Baseline, Configuration, Modification, Visit } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const VISIT = readVisit('computed-only');

interface Sum {
  massKg: number;
  momentKgMm: number;
  lateralKgMm: number;
}

const WORKED: Sum = { massKg: 310, momentKgMm: 310 * 420, lateralKgMm: 310 * -3 };

const masses = fc.integer({ min: 0, max: 40_000 }).map((grams) => grams / 1000);
const place = fc.record({
  massKg: masses,
  armMm: fc.integer({ min: -1500, max: 3500 }),
  lateralArmMm: fc.integer({ min: -900, max: 900 }),
});
type Placed = typeof place extends fc.Arbitrary<infer Value> ? Value : never;

const kits = fc.array(fc.record({ kind: fc.constantFrom('off' as const, 'on' as const), of: place }), { maxLength: 5 });

const IDS = ['a', 'b', 'c', 'd', 'e'] as const;

/** Where each of five configurations comes from: the one of the visit, another or itself, its own schedule, or nowhere. */
const sources = fc.array(
  fc.oneof(
    fc.record({ from: fc.constantFrom('this', undefined, ...IDS), kit: kits }),
    fc.record({ schedule: place.map((of) => ({ ...of, massKg: of.massKg + 250 })) }),
    fc.constant({}),
  ),
  { minLength: 5, maxLength: 5 },
);
type Source = { from?: string | undefined; kit?: { kind: 'off' | 'on'; of: Placed }[]; schedule?: Placed };

const modifications = fc.array(fc.record({ converts: fc.boolean(), installed: fc.array(place, { maxLength: 3 }) }), {
  maxLength: 4,
});

const visits = fc
  .tuple(sources, modifications)
  .map(([drawn, made]): { visit: Visit; drawn: Source[]; changes: Placed[] } => {
    const [template] = VISIT.modifications ?? [];
    if (!template || !VISIT.baseline) throw new Error('the visit has a modification and a baseline');
    const configurations = (drawn as Source[]).map(
      ({ from, kit }, index): Configuration => ({
        ...{ id: IDS[index] ?? '', name: `Configuration ${index}` },
        ...(kit && {
          follows: {
            configuration: from,
            kit: kit.map(({ kind, of }, line) => ({ kind, name: `Line ${line}`, ...of })),
          },
        }),
      }),
    );
    const schedules = (drawn as Source[]).flatMap(
      ({ schedule }, index): NonNullable<Baseline['schedules']> =>
        schedule
          ? [
              {
                ...{
                  configuration: IDS[index] ?? '',
                  reference: `Schedule ${index}`,
                  date: '2024-03-01',
                  basis: 'weighed',
                },
                ...{
                  emptyMassKg: schedule.massKg,
                  emptyArmMm: schedule.armMm,
                  emptyLateralArmMm: schedule.lateralArmMm,
                },
              },
            ]
          : [],
    );
    const visit: Visit = {
      ...VISIT,
      aircraft: { ...VISIT.aircraft, configuration: { id: 'this', name: 'This' }, configurations },
      baseline: { ...VISIT.baseline, schedules },
      modifications: made.map(
        ({ converts, installed }, index): Modification => ({
          ...template,
          id: `M${index}`,
          changes: installed.map((of, step) => ({ kind: 'installed', id: `N${index}-${step}`, name: 'New', ...of })),
          ...(converts && { convertsTo: 'this' }),
        }),
      ),
    };
    return { visit, drawn: drawn as Source[], changes: made.flatMap((each) => (each.converts ? [] : each.installed)) };
  });

const add = (sum: Sum, { massKg, armMm, lateralArmMm }: Placed, sign = 1): Sum => ({
  massKg: sum.massKg + sign * massKg,
  momentKgMm: sum.momentKgMm + sign * massKg * armMm,
  lateralKgMm: sum.lateralKgMm + sign * massKg * lateralArmMm,
});

const NOTHING: Sum = { massKg: 0, momentKgMm: 0, lateralKgMm: 0 };

/** The empty condition of a configuration by its own sum; undefined in a circle, or without any source. */
function direct(
  drawn: readonly Source[],
  id: string,
  changes: readonly Placed[],
  seen: string[] = [],
): Sum | undefined {
  if (id === 'this') return WORKED;
  const source = drawn[IDS.indexOf(id as (typeof IDS)[number])];
  if (!source || seen.includes(id)) return undefined;
  if (source.kit) {
    const base = direct(drawn, source.from ?? 'this', changes, [...seen, id]);
    return base && source.kit.reduce((sum, { kind, of }) => add(sum, of, kind === 'off' ? -1 : 1), base);
  }
  return source.schedule && changes.reduce((sum, of) => add(sum, of), add(NOTHING, source.schedule));
}

const emptiesOf = (visit: Visit, worked: Partial<Sum> & { massKg: number; momentKgMm: number } = WORKED) =>
  configurationEmpties(visit, worked, { along: equipmentChange(visit), across: equipmentChange(acrossOf(visit)) });

describe('configurationEmpties()', () => {
  test('are the direct sums of kits, chains and schedules, in both axes', () => {
    const bases = new Set<string>();
    fc.assert(
      fc.property(visits, ({ visit, drawn, changes }) => {
        const ours = new Map(emptiesOf(visit).map((empty) => [empty.id, empty]));
        for (const id of IDS) {
          const sum = direct(drawn, id, changes);
          const empty = ours.get(id);
          expect(empty !== undefined, id).toBe(sum !== undefined && sum.massKg >= 0.001);
          if (!empty || !sum) continue;
          bases.add(empty.basis);
          expect(empty.massKg).toBeCloseTo(sum.massKg, 9);
          expect(empty.momentKgMm).toBeCloseTo(sum.momentKgMm, 4);
          expect(empty.lateralKgMm).toBeCloseTo(sum.lateralKgMm, 4);
          expect(empty.armMm).toBeCloseTo(sum.momentKgMm / sum.massKg, 6);
        }
      }),
      { ...RUNS, numRuns: 300 },
    );
    expect([...bases].sort()).toEqual(['changed', 'follows', 'unchanged']);
  });

  test('do not depend on the order of the configurations', () => {
    fc.assert(
      fc.property(visits, ({ visit }) => {
        const { configurations = [] } = visit.aircraft;
        const turned = { ...visit, aircraft: { ...visit.aircraft, configurations: configurations.toReversed() } };
        expect(emptiesOf(turned).reverse()).toEqual(emptiesOf(visit));
      }),
      RUNS,
    );
  });

  test('have no lateral moment where that of the base is not known', () => {
    fc.assert(
      fc.property(visits, ({ visit, drawn }) => {
        const { lateralKgMm: _lateral, ...along } = WORKED;
        for (const { id, lateralKgMm } of emptiesOf(visit, along))
          expect(lateralKgMm !== undefined).toBe(!comesFromThis(drawn, id));
      }),
      RUNS,
    );
  });

  const only = (configuration: Partial<Configuration>, baseline: Partial<Baseline>): ConfigurationEmpty[] => {
    const configurations = [{ id: 'wheels', name: 'Wheels', ...configuration }];
    const visit = {
      ...VISIT,
      aircraft: { ...VISIT.aircraft, configuration: { id: 'floats', name: 'Floats' }, configurations },
      baseline: VISIT.baseline && { ...VISIT.baseline, ...baseline },
    };
    return emptiesOf(visit);
  };

  test('stay valid after a conversion: the baseline itself is the schedule of the configuration that it is of', () => {
    // 276.4 kg at 312 mm, and 0.62 kg of the strobe light at 3950 mm.
    const [wheels] = only({}, { configuration: 'wheels' });
    expect(wheels).toMatchObject({ basis: 'changed', reference: 'Schedule 2', weighedOn: '2024-05-17' });
    expect(wheels?.massKg).toBeCloseTo(277.02, 9);
    expect(wheels?.momentKgMm).toBeCloseTo(276.4 * 312 + 0.62 * 3950, 6);
    expect(only({}, { configuration: 'floats' })).toEqual([]);
    expect(only({}, {})).toEqual([]);
  });

  test('follow a kit even where the configuration has a schedule', () => {
    const kit = [{ kind: 'off' as const, name: 'Floats', massKg: 60, armMm: 400 }];
    const [wheels] = only({ follows: { kit } }, { configuration: 'wheels' });
    expect(wheels).toMatchObject({ basis: 'follows', from: 'floats', massKg: 250 });
  });
});

function comesFromThis(drawn: readonly Source[], id: string): boolean {
  const source = drawn[IDS.indexOf(id as (typeof IDS)[number])];
  if (!source?.kit) return id === 'this';
  return (source.from ?? 'this') === 'this' || comesFromThis(drawn, source.from ?? '');
}
