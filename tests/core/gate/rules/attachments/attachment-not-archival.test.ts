import { expect, test } from 'vitest';
import { mergePatch } from '../../../../../worker/edge/http/merge-patch.ts';
import { readFixture } from '../../../../read-fixture.ts';
import { assessRecord, RELEASABLE_AT } from '../../assess-record.ts';

test('ATTACHMENT_NOT_ARCHIVAL says of a paper that is PDF/A which level is needed, and not that it has no level', () => {
  const sha256 = 'a'.repeat(64);
  const attachments = [{ id: 'A1', kind: 'paper', title: 'Data sheet', sha256 }];
  const obstacles = [
    'the font Symbol does not say which text its codes stand for',
    'it is PDF/A of level b, and level a or u is needed',
  ];
  const facts = { attachments: { [sha256]: { ok: true, kind: 'pdf', pages: 1, bytes: 900, obstacles } as const } };
  const record = mergePatch(readFixture('visits/weighing-only'), { attachments });
  const { findings, isReleasable } = assessRecord(record, RELEASABLE_AT['weighing-only'] ?? '', facts);
  const [note] = findings.filter(({ code }) => code === 'ATTACHMENT_NOT_ARCHIVAL');
  expect(note?.sentence).toBe(
    'Because of A1, Data sheet, the pack is not an archival PDF: the font Symbol does not say which text its codes stand for; it is PDF/A of level b, and level a or u is needed',
  );
  expect(note?.remedy).toContain('PDF/A level a or u');
  expect(isReleasable).toBe(true);
});
