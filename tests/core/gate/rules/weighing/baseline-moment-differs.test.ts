import { describe, expect, test } from 'vitest';
import { readFixture } from '../../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../../assess-record.ts';

const COMPUTED = readFixture('visits/computed-only') as { baseline: object };

/** The codes of what an empty mass with an arm and a moment is told about its baseline. */
function codesOf(empty: { emptyMass: number; emptyArm: number; emptyMoment: number }): string[] {
  const record = { ...COMPUTED, baseline: { ...COMPUTED.baseline, ...empty } };
  const { findings } = assessRecord(record, RELEASABLE_AT['computed-only'] ?? '');
  return findings.flatMap(({ code, pointer }) => (pointer.startsWith('/baseline/empty') ? [code] : []));
}

describe('BASELINE_MOMENT_DIFFERS', () => {
  test('leaves a mass of nothing, which has no arm, to EMPTY_MASS_NOT_POSITIVE', () => {
    for (const emptyMass of [0, 1e-323, 1e-300, 1e-9])
      for (const emptyMoment of [-1e9, 0, 1e-300, 1e9])
        expect(codesOf({ emptyMass, emptyArm: 0, emptyMoment })).toEqual(['EMPTY_MASS_NOT_POSITIVE']);
  });

  test('is a finding of any mass that has an arm', () => {
    expect(codesOf({ emptyMass: 300, emptyArm: 0, emptyMoment: 600_000 })).toContain('BASELINE_MOMENT_DIFFERS');
  });
});
