import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compute, type Results } from '../../../worker/core/calc/results.ts';
import type { Visit } from '../../../worker/core/record/visit.ts';
import { factorOf, type Quantity, type Units } from '../../../worker/core/units/quantity.ts';
import { RUNS } from '../../property-runs.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';
import { mapMeasured } from '../record/map-measured.ts';
import { expectClose } from './expect-close.ts';
import { readVisit, SETTINGS, visitFrom } from './read-visit.ts';

const VISITS = fixturesIn('visits');

type Tree = Record<string, unknown>;

/** Names of the fields that are positions, measured from the datum; lengths, limits of error and angles are not. */
const isPosition = (key: string): boolean => /^(forwardMm|aftMm|armMm|(?!.*[lL]ateral)\w+ArmMm)$/.test(key);

/** A visit with its datum moved forward, so that every arm grows, and every moment by mass times that. */
function withDatumMoved(value: unknown, shiftMm: number): unknown {
  if (Array.isArray(value)) return value.map((entry) => withDatumMoved(entry, shiftMm));
  if (typeof value !== 'object' || value === null) return value;
  const tree = value as Tree;
  return Object.fromEntries(
    Object.entries(tree).map(([key, entry]) => {
      if (isPosition(key) && typeof entry === 'number') return [key, entry + shiftMm];
      if (key === 'momentKgMm') return [key, (entry as number) + (tree.massKg as number) * shiftMm];
      if (key === 'emptyMomentKgMm') return [key, (entry as number) + (tree.emptyMassKg as number) * shiftMm];
      return [key, withDatumMoved(entry, shiftMm)];
    }),
  );
}

/** What the pack prints of a computation, with positions counted from a datum given as an arm. */
function summary({ schedule, comparison, weighing, loading, change }: Results, datumMm: number): Tree {
  const from = (armMm: number | undefined): number | undefined => (armMm === undefined ? undefined : armMm - datumMm);
  return {
    schedule: schedule && { massKg: schedule.massKg, armMm: from(schedule.armMm), macPercent: schedule.macPercent },
    history: schedule?.history.map(({ massKg, armMm, changeKg }) => ({ massKg, armMm: from(armMm), changeKg })),
    expanded: schedule?.expanded,
    standard: weighing?.standard,
    differences: comparison && { ...comparison },
    change: { massKg: change.massKg, momentKgMm: change.momentKgMm - change.massKg * datumMm },
    extremes: loading?.extremes && {
      forward: { load: loading.extremes.forward.loading.load, armMm: from(loading.extremes.forward.armMm) },
      aft: { load: loading.extremes.aft.loading.load, armMm: from(loading.extremes.aft.armMm) },
      margins: loading.extremes.margins.map(({ side, margin, loading: at }) => ({ side, margin, massKg: at.massKg })),
    },
    verdicts: loading?.loadings.map(({ kind, verdict }) => ({ kind, state: verdict.state })),
    baggage: loading?.table.rows.map(({ cells }) =>
      cells.map((cell) => ('baggageKg' in cell ? cell.baggageKg : 'refused')),
    ),
    minimumSoloKg: loading?.minimumSoloKg,
    payloadFullFuelKg: loading?.limits.fullTanksPayload.kg,
  };
}

describe('compute() moving the datum moves every arm and nothing else', () => {
  for (const name of VISITS) {
    test(name, () => {
      const visit = readVisit(name);
      const before = summary(compute(visit, SETTINGS), 0);
      fc.assert(
        fc.property(fc.integer({ min: -5000, max: 5000 }), (shiftMm) => {
          const moved = compute(withDatumMoved(visit, shiftMm) as Visit, SETTINGS);
          expectClose(summary(moved, shiftMm), before, 1e-6);
        }),
        { ...RUNS, numRuns: 20 },
      );
    });
  }
});

describe('compute() gives the same whatever units the record is written in', () => {
  const OTHERS: Units[] = [
    { mass: 'lb', arm: 'in', volume: 'usgal' },
    { mass: 'lb', arm: 'm', volume: 'impgal' },
    { mass: 'kg', arm: 'mm', volume: 'l' },
    { mass: 'kg', arm: 'cm', volume: 'usgal' },
  ];
  for (const name of VISITS) {
    for (const units of OTHERS) {
      test(`${name} in ${Object.values(units).join(', ')}`, () => {
        const record = readFixture(`visits/${name}`) as Tree & { units: Units };
        const convert = (value: number, quantity: Quantity): number =>
          value * (factorOf(quantity, record.units) / factorOf(quantity, units));
        const rewritten = { ...(mapMeasured(record, { convert }) as Tree), units };
        // The rows of the crew table are round figures of the record's own unit, so they alone may differ.
        const { baggage: _ours, ...ours } = summary(compute(visitFrom(rewritten), SETTINGS), 0);
        const { baggage: _theirs, ...theirs } = summary(compute(visitFrom(record), SETTINGS), 0);
        expectClose(ours, theirs, 1e-6);
      });
    }
  }
});

test('compute() leaves the visit as it was', () => {
  const visit = readVisit('nose-wheel-full');
  const copy = structuredClone(visit);
  compute(visit, SETTINGS);
  expect(visit).toEqual(copy);
});
