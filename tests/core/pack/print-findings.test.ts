import { describe, expect, test } from 'vitest';
import { draftPdf } from '../../../worker/core/core.ts';
import { printFindings } from '../../../worker/core/pipeline/print-finding.ts';
import { recordFormatter } from '../../../worker/core/record/record-formatter.ts';
import { AT, assessed, posted } from './fixture.ts';

const CONTROLS = 'Barn \u0007\u001b[2J\u007f\u202e';

async function withName(name: string) {
  const record = posted('weighing-only') as { workshop: { name: string } };
  record.workshop.name = name;
  return assessed(record);
}

describe('draftPdf() says what cannot be printed', () => {
  test('no second time, where the assessment has said it', async () => {
    const visit = await withName(CONTROLS);
    const said = visit.findings.filter(({ code }) => code === 'TEXT_UNPRINTABLE');
    expect(said.map(({ pointer }) => pointer)).toEqual(['/workshop/name']);
    expect((await draftPdf(visit, AT)).findings).toEqual([]);
  });

  test('by code points, with its place, and once for a text however often it is printed', async () => {
    const visit = await withName(CONTROLS);
    const { findings } = await draftPdf({ ...visit, findings: [] }, AT);
    expect(findings).toMatchObject([{ code: 'TEXT_UNPRINTABLE', pointer: '/workshop/name' }]);
    expect(findings[0]?.sentence).toContain('U+0007 U+001B U+007F U+202E');
    expect(findings[0]?.sentence).not.toMatch(/[\p{Cc}\u202e]/u);
  });
});

describe('printFindings()', () => {
  const found = (context: string) => ({ code: 'CONTENT_DOES_NOT_FIT', documentId: 'compass-card', context }) as const;
  test('points at the one text that does not fit, and at none where it may be several', async () => {
    const visit = await withName('A name that is too long for the card');
    const fmt = recordFormatter(visit.visit);
    const pointers = (context: string) => printFindings([found(context)], visit, fmt).map(({ pointer }) => pointer);
    expect(pointers('A name that is too long')).toEqual(['/workshop/name']);
    expect(pointers('e')).toEqual(['']);
    expect(pointers('Nowhere in the record')).toEqual(['']);
  });
});
