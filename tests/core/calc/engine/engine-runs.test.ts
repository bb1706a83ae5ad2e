import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareRuns, lastRun, runsByTime } from '../../../../worker/core/calc/engine/engine-runs.ts';
import type { Visit } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';

type Run = NonNullable<Visit['engineRuns']>[number];
type Value = Run['values'][number];

const run = (when: Run['when'], values: Value[]): Run => ({ when, at: '2026-11-05T13:29:00Z', by: 'mila', values });
const value = (reading: number, rest: Partial<Value> = {}): Value => ({
  name: 'Oil',
  unit: '°C',
  value: reading,
  ...rest,
});

const someValues = fc.uniqueArray(
  fc.record({
    name: fc.constantFrom('Oil', 'Coolant', 'Fuel', 'Bus'),
    unit: fc.constant('u'),
    value: fc.double({ min: -100, max: 6000, noNaN: true }),
    resolution: fc.double({ min: 0, max: 10, noNaN: true }),
  }),
  { selector: ({ name }) => name, minLength: 1 },
);

describe('compareRuns()', () => {
  test('turned round, every change has the other sign and is as noticeable', () => {
    fc.assert(
      fc.property(someValues, someValues, (before, after) => {
        const there = compareRuns([run('before', before), run('after', after)]);
        const back = compareRuns([run('before', after), run('after', before)]);
        expect(new Set(there.map(({ name }) => name))).toEqual(new Set(back.map(({ name }) => name)));
        for (const { name, change, isChanged, before: was, after: is } of there) {
          const other = back.find((entry) => entry.name === name);
          expect(other).toMatchObject({ isChanged, before: is, after: was });
          expect((other?.change ?? 0) + (change ?? 0)).toBeCloseTo(0, 9);
        }
      }),
      RUNS,
    );
  });

  test('a step of the instrument is no change, more than a step is', () => {
    const changed = (by: number) =>
      compareRuns([run('before', [value(80, { resolution: 2 })]), run('after', [value(80 + by)])])[0]?.isChanged;
    expect([0, 2, -2, 2.1, -2.1].map(changed)).toEqual([false, false, false, true, true]);
  });

  test('limits of the run before hold where the run after has none', () => {
    const [row] = compareRuns([run('before', [value(80, { least: 50, most: 130 })]), run('after', [value(131)])]);
    expect(row).toMatchObject({ least: 50, most: 130, isWithin: false });
  });

  test('both ends of the limits are within', () => {
    for (const reading of [50, 130])
      expect(compareRuns([run('after', [value(reading, { least: 50, most: 130 })])])[0]?.isWithin).toBe(true);
  });

  test('does not compare degrees of one kind with those of another', () => {
    const rows = compareRuns([run('before', [value(80)]), run('after', [value(176, { unit: '°F' })])]);
    expect(rows.map(({ change }) => change)).toEqual([undefined, undefined]);
  });

  test('compares a name that stands twice in its order, and hides neither', () => {
    const rows = compareRuns([
      run('before', [value(600), value(610)]),
      run('after', [value(601, { most: 650 }), value(660, { most: 650 })]),
    ]);
    expect(rows.map(({ change, isWithin }) => [change, isWithin])).toEqual([
      [1, true],
      [50, false],
    ]);
  });
});

describe('lastRun()', () => {
  const at = (when: Run['when'], moment: string, reading: number): Run => ({
    ...run(when, [value(reading)]),
    at: moment,
  });
  const RUNS_OUT_OF_ORDER = [
    at('after', '2026-11-05T14:10:00+01:00', 84),
    at('after', '2026-11-05T13:29:00Z', 86),
    at('before', '2026-11-03T09:50:00+01:00', 80),
    at('after', '2026-11-05T13:59:00+01:00', 82),
    at('before', '2026-11-03T08:10:00+01:00', 78),
  ];

  test('goes by the instant at which a run ended, not by its place', () => {
    expect(lastRun(RUNS_OUT_OF_ORDER, 'after')).toEqual({ run: RUNS_OUT_OF_ORDER[1], index: 1 });
    expect(lastRun(RUNS_OUT_OF_ORDER, 'before')?.index).toBe(2);
    expect(compareRuns(RUNS_OUT_OF_ORDER)[0]).toMatchObject({ before: 80, after: 86 });
    expect(runsByTime(RUNS_OUT_OF_ORDER).map(({ index }) => index)).toEqual([4, 2, 3, 0, 1]);
  });

  test('of two runs that ended at once the later in the record is the last', () => {
    const twice = [at('after', '2026-11-05T13:29:00Z', 1), at('after', '2026-11-05T14:29:00+01:00', 2)];
    expect(lastRun(twice, 'after')?.index).toBe(1);
  });

  test('finds none where no run is of that kind', () => {
    expect(lastRun([at('before', '2026-11-03T09:50:00Z', 80)], 'after')).toBeUndefined();
  });
});
