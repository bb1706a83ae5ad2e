import { describe, expect, test } from 'vitest';
import { CAUSES, withCauses } from '../../../worker/core/gate/causes.ts';
import type { Finding } from '../../../worker/core/gate/finding.ts';
import { pointsOf } from '../../../worker/core/gate/points.ts';
import { RULES } from '../../../worker/core/gate/rules.ts';
import { readFixture } from '../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from './assess-record.ts';

const AT = RELEASABLE_AT['nose-wheel-full'] ?? '';

const finding = (code: string, more: Partial<Finding> = {}): Finding => ({
  ...{ code, severity: 'blocks', pointer: `/${code}`, sentence: code, remedy: 'x', source: 'x', data: {} },
  ...more,
});

describe('withCauses()', () => {
  test('an expired authorisation is one point, whatever the number of places', () => {
    const record = structuredClone(readFixture('visits/nose-wheel-full')) as {
      people: { id: string; validUntil: string }[];
    };
    const person = record.people.find(({ id }) => id === 'mila');
    if (person) person.validUntil = '2026-10-01';
    const expired = assessRecord(record, AT).findings.filter(({ code }) => code === 'AUTHORISATION_EXPIRED');
    expect(expired.length).toBeGreaterThan(3);
    expect(pointsOf(expired)).toHaveLength(1);
    expect(pointsOf(expired)[0]?.places).toHaveLength(expired.length - 1);
  });

  test('people who both expired are two points', () => {
    const expired = ['mila', 'tomas'].map((person, index) =>
      finding('AUTHORISATION_EXPIRED', { pointer: `/${index}`, data: { person } }),
    );
    expect(withCauses(expired).every(({ follows }) => follows === undefined)).toBe(true);
  });

  test('a consequence is folded under its cause, and comes after it', () => {
    const [cause, consequence] = withCauses([finding('METERS_JUMP'), finding('DEFERRAL_EXPIRED')]);
    expect(cause?.follows).toBeUndefined();
    expect(consequence?.follows).toEqual({ code: 'METERS_JUMP', pointer: '/METERS_JUMP' });
  });

  test('an accepted caution is the cause of nothing', () => {
    const accepted = finding('METERS_JUMP', { severity: 'caution', acknowledgedBy: 'jonas' });
    expect(withCauses([accepted, finding('DEFERRAL_EXPIRED')])[1]?.follows).toBeUndefined();
  });
});

test('a chain of causes has no circle', () => {
  const reaches = (from: string, to: string): boolean =>
    (CAUSES[from] ?? []).some((cause) => cause === to || reaches(cause, to));
  expect(Object.keys(CAUSES).filter((code) => reaches(code, code))).toEqual([]);
});

test('every code of the table is a rule', () => {
  const codes = new Set(RULES.map(({ code }) => code));
  const named = [...Object.keys(CAUSES), ...Object.values(CAUSES).flat()];
  expect([...new Set(named.filter((code) => !codes.has(code)))]).toEqual([]);
});
