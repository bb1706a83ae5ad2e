import { describe, expect, test } from 'vitest';
import { releaseVisit } from '../../../worker/core/gate/release.ts';
import { mergePatch } from '../../../worker/edge/http/merge-patch.ts';
import { readFixture } from '../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from './assess-record.ts';

const FULL = readFixture('visits/nose-wheel-full');
const AT = RELEASABLE_AT['nose-wheel-full'] ?? '';
const ATTESTATION = { by: 'jonas', knowsOfNoHazard: true, at: AT };

const release = (patch: object, attestation = ATTESTATION): ReturnType<typeof releaseVisit> =>
  releaseVisit(assessRecord(mergePatch(FULL, patch), AT), attestation);

const codesOf = (outcome: ReturnType<typeof releaseVisit>): string[] =>
  outcome.ok ? [] : outcome.findings.map(({ code }) => code);

describe('releaseVisit()', () => {
  test('carries who released, with which statement and when', () => {
    const outcome = release({});
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
    const { releasedBy, statement, releasedAt } = outcome.released;
    expect([releasedBy.name, statement.id, releasedAt]).toEqual(['Jonas Veldt', 'work-complete', AT]);
  });

  test('refuses a person whom the record does not name, even one of its people', () => {
    expect(codesOf(release({}, { ...ATTESTATION, by: 'mila' }))).toEqual(['RELEASED_BY_ANOTHER']);
  });

  test('refuses a person who does not state that they know of no hazard', () => {
    expect(codesOf(release({}, { ...ATTESTATION, knowsOfNoHazard: false }))).toEqual(['HAZARD_NOT_DENIED']);
  });

  test('says everything that stops it at once, and no note among it', () => {
    const outcome = release({ weighing: { indoors: false } }, { by: 'mila', knowsOfNoHazard: false, at: AT });
    expect(codesOf(outcome)).toEqual(['WEIGHED_OUTDOORS', 'RELEASED_BY_ANOTHER', 'HAZARD_NOT_DENIED']);
  });

  test('refuses a record without a release', () => {
    expect(codesOf(release({ release: null }))).toEqual(['RELEASE_MISSING']);
  });
});
