import { expect, test } from 'vitest';
import { readFixture } from '../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from './assess-record.ts';

test('a finding that was deferred before the visit keeps the day on which it was found', () => {
  const record = readFixture('visits/nose-wheel-full') as { findings: { id: string; deferral?: object }[] };
  const findings = record.findings.map((finding) =>
    finding.id === 'F4'
      ? {
          ...finding,
          foundAt: '2026-07-30T10:00:00+01:00',
          deferral: { ...finding.deferral, firstDeferredOn: '2026-08-01', timesCarried: 1 },
        }
      : finding,
  );
  const assessment = assessRecord({ ...record, findings }, RELEASABLE_AT['nose-wheel-full'] ?? '');
  expect(assessment.findings.map(({ code }) => code)).not.toContain('DATES_OUT_OF_ORDER');
});
