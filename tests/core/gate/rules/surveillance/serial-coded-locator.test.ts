import { expect, test } from 'vitest';
import { readFixture } from '../../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../../assess-record.ts';

interface Visit {
  surveillance: { devices: { kind: string; addressSet?: string; codedBy?: string; readBack?: { address: string } }[] };
}

/** Codes of what stops the demo with another code in the locator. */
function against(code: string, codedBy?: string): string[] {
  const visit = structuredClone(readFixture('visits/nose-wheel-full')) as Visit;
  for (const device of visit.surveillance.devices.filter(({ kind }) => kind === 'locator')) {
    device.addressSet = code;
    if (device.readBack) device.readBack.address = code;
    if (codedBy !== undefined) device.codedBy = codedBy;
  }
  const { findings } = assessRecord(visit, RELEASABLE_AT['nose-wheel-full'] ?? '');
  return findings.filter(({ severity }) => severity === 'blocks').map(({ code: found }) => found);
}

// 15 hexadecimal digits of a 406 MHz beacon: common practice, no source.
const BEACON = '2DC843E88EFFBFF';

test('a locator that sends its serial number need not have the address of the aircraft', () => {
  expect(against(BEACON, 'serial')).toEqual([]);
});

test('without that statement its code must be the address', () => {
  expect(against(BEACON)).toContain('ADDRESS_UNREADABLE');
  expect(against('F00A13')).toContain('ADDRESS_MISMATCH');
});
