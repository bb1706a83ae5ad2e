import { expect, test } from 'vitest';
import { patched } from '../../../../json-patch.ts';
import { readFixture } from '../../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../../assess-record.ts';

const DEMO = readFixture('visits/nose-wheel-full') as { surveillance: { radioChecks: unknown; devices: unknown } };

/** Whether the address is called unreadable, with other tests and without an address. */
function isUnreadable(surveillance: object): boolean {
  const record = patched(DEMO, [
    { op: 'replace', path: '/surveillance', value: surveillance },
    { op: 'remove', path: '/aircraft/address24' },
  ]);
  const { findings } = assessRecord(record, RELEASABLE_AT['nose-wheel-full'] ?? '');
  return findings.some(({ code }) => code === 'ADDRESS_UNREADABLE');
}

test('ADDRESS_UNREADABLE asks for an address only where something sends one', () => {
  const { radioChecks, devices } = DEMO.surveillance;
  expect(isUnreadable({ devices: [], radioChecks })).toBe(false);
  expect(isUnreadable({ devices, radioChecks })).toBe(true);
});
