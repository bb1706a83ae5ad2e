import { describe, expect, test } from 'vitest';
import { readFixture } from '../../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../../assess-record.ts';

interface Change {
  kind: string;
  item?: object;
  mass?: number;
}

const COMPUTED = readFixture('visits/computed-only') as {
  baseline: { weighedOn: string; date: string; emptyMass: number; emptyArm: number };
  modifications: { changes: Change[] }[];
};

/** The visit that is computed from the papers, over a history; masses in the unit of its record, all at one arm. */
function movedSince(history: [date: string, mass: number][]): { sentence: string } | undefined {
  const { emptyArm } = COMPUTED.baseline;
  const entries = history.map(([date, mass]) => ({ date, reason: 'A step', mass, moment: mass * emptyArm }));
  const record = { ...COMPUTED, baseline: { ...COMPUTED.baseline, history: entries } };
  const { findings } = assessRecord(record, RELEASABLE_AT['computed-only'] ?? '');
  return findings.find(({ code, pointer }) => code === 'REWEIGH_DUE' && pointer === '/modifications');
}

describe('REWEIGH_DUE', () => {
  const { weighedOn, emptyMass } = COMPUTED.baseline;
  const step = 0.013 * emptyMass;

  test('counts the net change of earlier visits since the weighing', () => {
    expect(movedSince([[weighedOn, emptyMass]])).toBeUndefined();
    const before = [weighedOn, emptyMass - 2 * step] as [string, number];
    const creep = movedSince([before, ['2025-06-01', emptyMass - step], ['2026-01-01', emptyMass]]);
    expect(creep?.sentence).toContain('since the weighing');
  });

  test('counts nothing that went back', () => {
    const there = [weighedOn, emptyMass] as [string, number];
    expect(movedSince([there, ['2025-06-01', emptyMass + 2 * step], ['2026-01-01', emptyMass]])).toBeUndefined();
  });

  test('takes a modification by what it adds in all: 3.1 kg out and 3.1 kg in is nothing', () => {
    const [modification] = COMPUTED.modifications;
    const [installed] = modification?.changes ?? [];
    const changes = [
      { ...installed, mass: 3.1 },
      { kind: 'removed', item: 'E2', fate: 'owner' },
    ];
    const record = { ...COMPUTED, modifications: [{ ...modification, changes }] };
    const { findings } = assessRecord(record, RELEASABLE_AT['computed-only'] ?? '');
    expect(findings.filter(({ code }) => code === 'REWEIGH_DUE')).toEqual([]);
  });

  test('counts nothing of before the weighing', () => {
    expect(
      movedSince([
        ['2015-06-01', emptyMass - 5 * step],
        ['2016-06-01', emptyMass + step],
        [weighedOn, emptyMass],
      ]),
    ).toBeUndefined();
  });
});
