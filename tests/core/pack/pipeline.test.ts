import { afterEach, describe, expect, test, vi } from 'vitest';
import { draftDocuments, draftPdf, seal } from '../../../worker/core/core.ts';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { nodesOf, openFile, pageTexts, structureOf } from '../print/read-back.ts';
import { AT, assessed, attestation, FILES, PLACE, posted } from './fixture.ts';

afterEach(() => vi.useRealTimers());

async function sealedDemo() {
  const visit = await assessed(posted('nose-wheel-full'));
  const outcome = await seal(visit, attestation(visit), PLACE, FILES);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
  return { visit, sealed: outcome.sealed };
}

describe('seal()', () => {
  test('gives the same bytes whenever it runs', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('2031-01-01T00:00:00Z') });
    const first = await sealedDemo();
    vi.setSystemTime(new Date('2044-06-30T12:00:00Z'));
    const second = await sealedDemo();
    expect(second.sealed.pdfSha256).toBe(first.sealed.pdfSha256);
    expect(second.sealed.manifestJson).toBe(first.sealed.manifestJson);
  });

  test('attaches the record and the manifest, byte for byte what was digested', async () => {
    const { visit, sealed } = await sealedDemo();
    const file = await openFile(sealed.pdf);
    const attached = new Map<string, string>();
    for (const [id, { filename }] of (await file.getAttachments()) ?? []) {
      attached.set(filename, new TextDecoder().decode((await file.getAttachmentContent(id)) ?? undefined));
    }
    expect(attached.get('record.json')).toBe(sealed.recordJson);
    expect(attached.get('manifest.json')).toBe(sealed.manifestJson);
    const manifest = JSON.parse(sealed.manifestJson);
    expect(manifest.record.sha256).toBe(visit.recordSha256);
    expect(await sha256(sealed.recordJson)).toBe(visit.recordSha256);
    for (const { id, html } of sealed.documents) {
      const stated = manifest.documents.find((document: { id: string }) => document.id === id);
      expect(stated?.sha256, id).toBe(await sha256(html));
    }
  });

  test('prints every document of the demo visit, tagged, with its registration and pack on every page', async () => {
    const { sealed } = await sealedDemo();
    const pages = await pageTexts(sealed.pdf);
    expect(pages.length).toBeGreaterThanOrEqual(20);
    for (const [index, text] of pages.entries()) {
      expect(text).toContain('Q-SLM-P1-1');
      expect(text).toContain(`page ${index + 1} of ${pages.length}`);
      expect(text).not.toContain('NOT RELEASED');
      expect(text).not.toMatch(/undefined|NaN|\[object/);
    }
    const titles = pages.join('\n');
    for (const { title } of sealed.documents.slice(1)) expect(titles).toContain(title);
    const cover = await structureOf(sealed.pdf, 1);
    expect(nodesOf(cover, 'H1')).toHaveLength(1);
    expect(nodesOf(cover, 'Table')).toHaveLength(2);
    expect(nodesOf(cover, 'Link').length).toBe(sealed.documents.length - 1);
  });

  test('leads from the contents to the page on which each document starts', async () => {
    const { sealed } = await sealedDemo();
    const pages = await pageTexts(sealed.pdf);
    const line = /Weighing report\s*(\d+)/.exec(pages[0] ?? '');
    expect(pages[Number(line?.[1]) - 1]).toContain('Scales and their certificates');
  });

  test('prints what was computed, in the units of the record', async () => {
    const { visit, sealed } = await sealedDemo();
    const text = (await pageTexts(sealed.pdf)).join('\n');
    expect(text).toContain(`${visit.results.schedule?.massKg.toFixed(1)} kg`);
  });

  test('refuses a visit with an open point and says which', async () => {
    const record = posted('nose-wheel-full') as { modifications: { basis?: string }[] };
    delete record.modifications[0]?.basis;
    const visit = await assessed(record);
    const outcome = await seal(visit, attestation(visit), PLACE, FILES);
    expect(outcome.ok).toBe(false);
    expect(!outcome.ok && outcome.findings.map(({ code, pointer }) => [code, pointer])).toEqual([
      ['MODIFICATION_WITHOUT_BASIS', '/modifications/0/basis'],
    ]);
  });

  test('refuses another person and a missing statement about hazards', async () => {
    const visit = await assessed(posted('nose-wheel-full'));
    const outcome = await seal(visit, { ...attestation(visit), by: 'mila', knowsOfNoHazard: false }, PLACE, FILES);
    expect(!outcome.ok && outcome.findings.map(({ code }) => code)).toEqual([
      'RELEASED_BY_ANOTHER',
      'HAZARD_NOT_DENIED',
    ]);
  });
});

describe('draftPdf()', () => {
  test('marks every page NOT RELEASED, also of a visit that could be released', async () => {
    const { bytes } = await draftPdf(await assessed(posted('nose-wheel-full')), AT, { files: FILES });
    for (const text of await pageTexts(bytes)) expect(text).toContain('NOT RELEASED');
  });

  test('prints one document alone, on Letter when asked', async () => {
    const visit = await assessed(posted('nose-wheel-full'));
    const { bytes } = await draftPdf(visit, AT, { document: 'weighing-report', paper: 'Letter', files: FILES });
    const file = await openFile(bytes);
    expect((await file.getPage(1)).view).toEqual([0, 0, 612, 792]);
    expect((await pageTexts(bytes)).join('\n')).not.toContain('Parts trace');
  });
});

describe('draftDocuments()', () => {
  test('lists every open point on the cover', async () => {
    const record = posted('nose-wheel-full') as { weighing: { indoors: boolean }; release?: unknown };
    record.weighing.indoors = false;
    delete record.release;
    const documents = await draftDocuments(await assessed(record), AT);
    const cover = documents.find(({ id }) => id === 'cover')?.html ?? '';
    expect(cover).toContain('RELEASE_MISSING');
    expect(cover).toContain('WEIGHED_OUTDOORS');
    expect(cover).toContain('NOT RELEASED');
  });

  test('escapes markup that the record carries', async () => {
    const record = posted('nose-wheel-full') as { workshop: { name: string } };
    record.workshop.name = '<b>&"Barn"</b><script>';
    const documents = await draftDocuments(await assessed(record), AT);
    expect(documents[0]?.html).toContain('&lt;b&gt;&amp;&quot;Barn&quot;&lt;/b&gt;&lt;script&gt;');
    const { bytes } = await draftPdf(await assessed(record), AT, { document: 'cover', files: FILES });
    expect(bytes).toBeInstanceOf(Uint8Array);
  });
});
