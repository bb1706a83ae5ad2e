import { describe, expect, test } from 'vitest';
import type { ArchiveFacts } from '../../../../worker/core/gate/rule.ts';
import { patched } from '../../../json-patch.ts';
import { readFixture } from '../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../assess-record.ts';

type Patch = Parameters<typeof patched>[1];

const FULL = 'nose-wheel-full';

/** Codes of the findings that stop the release of a changed record. */
function stopped(patch: Patch, of = FULL, facts: ArchiveFacts = {}): string[] {
  const record = patched(readFixture(`visits/${of}`), patch);
  const { findings } = assessRecord(record, RELEASABLE_AT[of] ?? '', facts);
  return findings
    .filter(({ severity, acknowledgedBy }) => severity !== 'note' && acknowledgedBy === undefined)
    .map(({ code }) => code);
}

const add = (path: string, value: unknown) => ({ op: 'add' as const, path, value });
const replace = (path: string, value: unknown) => ({ op: 'replace' as const, path, value });

describe('a record that agrees with itself in another way is left alone', () => {
  test('a part of a kit names several serial numbers', () => {
    expect(stopped([replace('/parts/0/serialOrBatch', '30417, 30418')])).toEqual([]);
  });

  test('a test follows the changes, each with its time, and not the end of the modification', () => {
    const at = '2026-11-04T15:00:00+01:00';
    const before = '2026-11-04T14:00:00+01:00';
    const tested = replace('/modifications/0/tests/0/doneAt', at);
    expect(stopped([tested])).toContain('TEST_BEFORE_MODIFICATION');
    const done = [0, 1].map((index) => add(`/modifications/0/changes/${index}/doneAt`, before));
    expect(stopped([tested, ...done])).not.toContain('TEST_BEFORE_MODIFICATION');
    expect(stopped([tested, ...done.slice(1)])).toContain('TEST_BEFORE_MODIFICATION');
  });

  test('a binding bulletin in range does not apply by a document that a second person confirmed', () => {
    const inRange = replace('/bulletins/items/2/applicability/serials/0/from', 'T4-2200');
    const document = add('/bulletins/items/2/document', 'Letter 26-14 to engine T4-2217');
    const confirmed = (by: string) => [
      replace('/bulletins/items/2/by', 'mila'),
      add('/bulletins/items/2/confirmedBy', by),
    ];
    expect(stopped([inRange, document, ...confirmed('jonas')])).toEqual([]);
    expect(stopped([inRange, ...confirmed('jonas')])).toContain('NOT_APPLICABLE_CONTRADICTED');
    expect(stopped([inRange, document, ...confirmed('mila')])).toContain('NOT_APPLICABLE_CONTRADICTED');
  });

  test('a finding near its limit is monitored under a limitation of the release', () => {
    const limitation = 'Finding F6: by day only until it was looked at again';
    const limit = replace('/findings/5/severity', 'limit');
    expect(stopped([limit])).toContain('LIMIT_FINDING_LEFT');
    const answered = [add('/findings/5/limitation', limitation), add('/release/limitations/-', limitation)];
    expect(stopped([limit, ...answered])).toEqual([]);
  });

  test('the papers have the old serial number after an exchange', () => {
    const read = [replace('/aircraft/propeller/serial', 'PW-0990')];
    expect(stopped(read)).toContain('SERIAL_DIFFERS_FROM_BASELINE');
    const { equipment } = (readFixture(`visits/${FULL}`) as { baseline: { equipment: { id: string }[] } }).baseline;
    const propeller = equipment.find(({ id }) => id === 'E02');
    const exchanged = add('/modifications/4/changes/-', {
      kind: 'replaced',
      item: 'E02',
      serial: 'PW-0882',
      fate: 'returned',
      by: { ...propeller, id: 'E39', serial: 'PW-0990' },
    });
    expect(stopped([...read, exchanged])).not.toContain('SERIAL_DIFFERS_FROM_BASELINE');
  });

  test('a major change of an experimental aircraft in the United States needs no approval', () => {
    const major = [replace('/modifications/0/classification', 'major')];
    expect(stopped(major)).toContain('APPROVAL_REFERENCE_MISSING');
    expect(stopped([...major, replace('/aircraft/regime', 'us-experimental')])).not.toContain(
      'APPROVAL_REFERENCE_MISSING',
    );
  });

  test('an authorisation that is valid on the day of the signature is enough for every role', () => {
    expect(stopped([replace('/people/2/validUntil', '2026-11-02')])).toContain('AUTHORISATION_EXPIRED');
    expect(stopped([replace('/people/2/validUntil', '2026-11-05')])).toEqual([]);
  });

  test('two antennas in one box may be elsewhere than the box', () => {
    expect(stopped([replace('/antennas/items/2/position/arm', 1500)])).not.toContain('ANTENNA_ARM_DIFFERS');
  });
});
