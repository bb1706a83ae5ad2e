import { describe, expect, test } from 'vitest';
import { compute } from '../../../../worker/core/calc/results.ts';
import type { Visit } from '../../../../worker/core/record/visit.ts';
import { readVisit, SETTINGS } from '../read-visit.ts';

const FULL = readVisit('nose-wheel-full');
const sheetOf = (visit: Visit) => compute(visit, SETTINGS).loading;

describe('loadingSheet()', () => {
  test('names both extremes and the standard crews, and burns each to the end', () => {
    const sheet = sheetOf(FULL);
    expect(sheet?.loadings.map(({ kind }) => kind)).toEqual([
      'foremost',
      'rearmost',
      'standard-pilot',
      'two-standard-persons',
    ]);
    for (const { path } of sheet?.loadings ?? []) expect(path.at(-1)?.load['wing-tanks'] ?? 0).toBe(0);
  });

  test('gives the standard crew the fuel that the maximum mass allows', () => {
    const heavy = { ...FULL, aircraft: { ...FULL.aircraft, maximumMassKg: 520 } };
    const two = sheetOf(heavy)?.loadings.find(({ kind }) => kind === 'two-standard-persons');
    expect(two?.path[0]?.massKg).toBeCloseTo(520, 9);
  });

  test('full fuel leaves the payload that is left', () => {
    const sheet = sheetOf(FULL);
    const empty = compute(FULL, SETTINGS).schedule?.massKg ?? 0;
    expect(sheet?.limits.fullFuelKg).toBeCloseTo(78 * 0.72, 9);
    expect(sheet?.limits.fullTanksPayload.kg).toBeCloseTo(600 - empty - 78 * 0.72, 9);
  });

  test('has no margins and no least pilot without an envelope, as for a weight-shift aircraft', () => {
    const { envelope: _envelope, emptyRange: _range, ...aircraft } = FULL.aircraft;
    const sheet = sheetOf({ ...FULL, aircraft: { ...aircraft, class: 'weight-shift' } });
    expect([sheet?.envelope, sheet?.minimumSoloKg, sheet?.extremes?.margins]).toEqual([undefined, undefined, []]);
    expect(sheet?.loadings.every(({ verdict }) => verdict.state === 'inside')).toBe(true);
  });

  test('has no extremes where the least pilot alone breaks a limit', () => {
    const zeroFuel = { ...FULL, aircraft: { ...FULL.aircraft, maximumZeroFuelMassKg: 370 } };
    expect(sheetOf(zeroFuel)?.extremes).toBeUndefined();
    const [limit] = FULL.aircraft.loadingLimits ?? [];
    const tight = limit && {
      ...FULL,
      aircraft: { ...FULL.aircraft, loadingLimits: [{ ...limit, maximumMassKg: 54 }] },
    };
    expect(tight && sheetOf(tight)?.extremes).toBeUndefined();
  });

  test('has rows in round figures of the record’s own mass unit', () => {
    const rows = sheetOf(readVisit('weighing-only'))?.table.rows ?? [];
    expect(rows.slice(0, 3).map(({ eachKg }) => Math.round(eachKg / 0.45359237))).toEqual([120, 140, 160]);
  });
});
