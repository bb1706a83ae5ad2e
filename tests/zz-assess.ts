import { assessRecord, RELEASABLE_AT } from '/work/main/tests/core/gate/assess-record.ts';
import { readFixture } from '/work/main/tests/read-fixture.ts';

const only = process.argv.slice(2);
for (const [n, at] of Object.entries(RELEASABLE_AT)) {
  if (only.length && !only.includes(n)) continue;
  const a = assessRecord(readFixture(`visits/${n}`), at);
  console.log('##', n, a.isReleasable);
  for (const f of a.findings)
    if (f.severity !== 'note' && !f.acknowledgedBy) console.log('  ', f.severity, f.code, f.pointer, f.sentence);
}
