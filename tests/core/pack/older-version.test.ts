import { beforeAll, describe, expect, test, vi } from 'vitest';
import { type Assessed, assess, assessmentAnswer, draftDocuments, seal } from '../../../worker/core/core.ts';
import { canonicalJson } from '../../../worker/core/pack/canonical-json.ts';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import * as upgrades from '../../../worker/core/record/upgrades.ts';
import { type Operation, patched } from '../../json-patch.ts';
import { readFixture } from '../../read-fixture.ts';
import { withLaterFields } from '../../with-later-fields.ts';
import { AT, assessed, attestation, FILES, PLACE } from './fixture.ts';

const OLD = withLaterFields(readFixture('records/version-1/nose-wheel-full'), readFixture('visits/nose-wheel-full'));
const PRESENT = upgrades.upgrade(OLD);

describe.each([1, 2, 3])(
  'a record of version %i gives what the same record of the present version gives',
  (version) => {
    const posted = withLaterFields(
      readFixture(`records/version-${version}/nose-wheel-full`),
      readFixture('visits/nose-wheel-full'),
    );
    let old: Assessed;
    let present: Assessed;

    beforeAll(async () => {
      [old, present] = await Promise.all([assessed(posted), assessed(upgrades.upgrade(posted))]);
    });

    test('results and findings', () => {
      const { recordSha256: _r, assessmentSha256: _a, ...answer } = assessmentAnswer(present);
      expect(assessmentAnswer(old)).toMatchObject(answer);
    });

    test('its own digest, over what was posted', async () => {
      expect(old.recordJson).toBe(canonicalJson(posted));
      expect(old.recordSha256).toBe(await sha256(canonicalJson(posted)));
      expect(old.recordSha256).not.toBe(present.recordSha256);
    });

    test('documents, apart from that digest', async () => {
      const told = async (of: Assessed) => {
        const documents = await draftDocuments(of, AT);
        return documents.map(({ id, html }) => [id, html.replaceAll(of.recordSha256, 'DIGEST')]);
      };
      expect(await told(old)).toEqual(await told(present));
    });

    test('a sealed pack, with the record as it was posted', async () => {
      const outcome = await seal(old, attestation(old), PLACE, FILES);
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings, null, 1));
      const { recordJson, manifestJson, factsJson } = outcome.sealed;
      expect(recordJson).toBe(canonicalJson(posted));
      expect(JSON.parse(manifestJson)).toMatchObject({ record: { sha256: old.recordSha256 } });
      const other = await seal(present, attestation(present), PLACE, FILES);
      const withoutDigest = (facts: string, digest: string) => facts.replaceAll(digest, 'DIGEST');
      if (!other.ok) throw new Error(JSON.stringify(other.findings, null, 1));
      const facts = JSON.parse(withoutDigest(factsJson, old.recordSha256));
      const same = JSON.parse(withoutDigest(other.sealed.factsJson, present.recordSha256));
      expect({ ...facts, open: { ...facts.open, over: '' } }).toEqual({ ...same, open: { ...same.open, over: '' } });
    });
  },
);

describe('a record of version 1', () => {
  test('points at what was posted in every finding', async () => {
    const patches = [
      [OLD, 'leastRadius', 'leastSpacing'],
      [PRESENT, 'minimumRadius', 'minimumSpacing'],
    ] as const;
    const [first, second] = await Promise.all(
      patches.map(([record, radius, spacing]) => {
        const changes: Operation[] = [
          { op: 'replace', path: `/antennas/items/0/groundPlane/${radius}`, value: 10 },
          { op: 'replace', path: '/antennas/items/0/groundPlane/size', value: '漢' },
          { op: 'replace', path: `/antennas/items/1/${spacing}`, value: 9000 },
        ];
        return assessed(patched(record, changes));
      }),
    );
    const codes = first?.findings.map(({ code, pointer }) => `${code} ${pointer}`);
    expect(codes).toContain('PLATE_SMALL /antennas/items/0/groundPlane');
    expect(codes).toContain('TEXT_UNPRINTABLE /antennas/items/0/groundPlane/size');
    expect(codes?.filter((code) => code.startsWith('ANTENNAS_CLOSE')).length).toBeGreaterThan(0);
    expect(first?.findings).toEqual(second?.findings);
  });
});

test('every pointer of an answer is brought to the record as posted', async () => {
  const before = assessmentAnswer(await assessed(PRESENT));
  const pointers = JSON.stringify(before).match(/"pointer":"/g) ?? [];
  expect(pointers.length).toBeGreaterThan(before.findings.length);
  const moved = vi.spyOn(upgrades, 'pathAsPosted').mockImplementation((_, path) => ['posted', ...path]);
  const after = JSON.stringify(assessmentAnswer(await assessed(PRESENT)));
  moved.mockRestore();
  expect(after.match(/"pointer":"\/posted/g)).toHaveLength(pointers.length);
});

test('a text that cannot be printed is found in the record as posted', async () => {
  const outcome = await assess(patched(OLD, [{ op: 'replace', path: '/workshop/name', value: '漢' }]), AT);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
  expect(outcome.assessed.findings).toContainEqual(
    expect.objectContaining({ code: 'TEXT_UNPRINTABLE', pointer: '/workshop/name' }),
  );
});
