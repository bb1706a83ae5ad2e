import { describe, expect, test } from 'vitest';
import { compute } from '../../../../worker/core/calc/results.ts';
import type { Visit } from '../../../../worker/core/record/visit.ts';
import { readVisit, SETTINGS } from '../read-visit.ts';

const FULL = readVisit('nose-wheel-full');
const COMPUTED = readVisit('computed-only');

const resultsOf = (visit: Visit) => compute(visit, SETTINGS);

describe('revisedSchedule()', () => {
  test('is the weighed condition where the visit weighed', () => {
    const { schedule, weighing } = resultsOf(FULL);
    expect(schedule?.basis).toBe('weighed');
    expect(schedule?.massKg).toBe(weighing?.empty.massKg);
    expect([schedule?.weighedOn, schedule?.changesSinceWeighing, schedule?.supersedes]).toEqual([
      '2026-11-05',
      0,
      'Schedule 4',
    ]);
  });

  test('is the computed condition where it did not, with the day of the weighing behind it', () => {
    const { schedule, prediction } = resultsOf(COMPUTED);
    expect(schedule?.basis).toBe('computed');
    expect(schedule?.massKg).toBe(prediction?.massKg);
    expect(schedule?.massKg).toBeCloseTo(276.4 + 0.62, 12);
    expect(schedule?.momentKgMm).toBeCloseTo(276.4 * 312 + 0.62 * 3950, 6);
    expect([schedule?.weighedOn, schedule?.changesSinceWeighing, schedule?.expanded]).toEqual([
      '2024-05-17',
      1,
      undefined,
    ]);
    expect(schedule?.usefulLoadKg).toBeCloseTo(450 - 277.02, 10);
  });

  test('counts no update in place among the changes', () => {
    const modifications = COMPUTED.modifications?.map((each) => ({
      ...each,
      changes: [
        ...each.changes,
        { kind: 'updated' as const, item: 'E2', what: 'software' as const, from: '1.0', to: '1.1' },
      ],
    }));
    const { schedule, change } = resultsOf({ ...COMPUTED, ...(modifications && { modifications }) });
    expect([change.lines.length, schedule?.changesSinceWeighing]).toEqual([2, 1]);
  });

  test('does not exist without a weighing or a baseline that says where the mass is', () => {
    const { baseline, ...bare } = COMPUTED;
    expect(resultsOf(bare).schedule).toBeUndefined();
    const { emptyArmMm: _arm, ...armless } = baseline ?? { emptyMassKg: 1 };
    expect(resultsOf({ ...COMPUTED, baseline: armless as NonNullable<Visit['baseline']> }).schedule).toBeUndefined();
  });

  test('prefers the printed moment of the baseline to its arm', () => {
    const baseline = COMPUTED.baseline && { ...COMPUTED.baseline, emptyMomentKgMm: 86_300 };
    const { prediction } = resultsOf({ ...COMPUTED, ...(baseline && { baseline }) });
    expect(prediction?.baseline.momentKgMm).toBe(86_300);
  });
});

describe('emptyMassHistory()', () => {
  test('runs from the papers through corrections and every modification to the weighing', () => {
    const history = resultsOf(FULL).schedule?.history ?? [];
    expect(history.map(({ cause }) => ('modification' in cause ? cause.modification : cause.kind))).toEqual([
      'stated',
      'stated',
      'stated',
      'record-corrected',
      'M1',
      'M2',
      'M3',
      'M4',
      'M5',
      'weighed',
    ]);
  });

  test('each entry is the one before it and its own change', () => {
    const history = resultsOf(FULL).schedule?.history ?? [];
    for (const [index, entry] of history.entries()) {
      const before = history[index - 1];
      if (!before) continue;
      expect(before.massKg + entry.changeKg).toBeCloseTo(entry.massKg, 9);
      expect(before.momentKgMm + entry.changeKgMm).toBeCloseTo(entry.momentKgMm, 4);
    }
    expect(history.at(-1)?.massKg).toBe(resultsOf(FULL).schedule?.massKg);
  });

  test('does not list the schedule in the papers twice', () => {
    const dates = resultsOf(FULL).schedule?.history.filter(({ date }) => date === '2019-05-14');
    expect(dates).toHaveLength(1);
  });
});

describe('compareWeighing()', () => {
  test('the difference is significant beyond twice its standard uncertainty', () => {
    const { comparison, weighing, prediction } = resultsOf(FULL);
    expect(comparison?.standard.massKg).toBeCloseTo(
      Math.hypot(weighing?.standard.massKg ?? 0, prediction?.standard.massKg ?? 0),
      12,
    );
    expect(comparison?.massRatio).toBeCloseTo(
      Math.abs(comparison?.differenceKg ?? 0) / (comparison?.standard.massKg ?? 1),
      12,
    );
    expect(comparison?.isSignificant).toBe((comparison?.massRatio ?? 0) > 2 || (comparison?.armRatio ?? 0) > 2);
  });

  test('a mass known to ± 0.6 kg (k = 2) in the papers counts as 0.3 kg', () => {
    const { modifications: _none, asFound: _nothing, ...unchanged } = FULL;
    expect(resultsOf(unchanged).prediction?.standard).toEqual({ massKg: 0.3, armMm: 0 });
  });
});
