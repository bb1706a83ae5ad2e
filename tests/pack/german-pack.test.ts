import { describe, expect, test } from 'vitest';
import { seal } from '../../worker/pipeline.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { openFile, pageTexts } from '../print/read-back.ts';
import { assessed, FILES, posted } from './fixture.ts';

/** A sealed pack of a fixture visit whose workshop writes German. */
async function germanPack(name: string) {
  const record = posted(name) as { workshop: { language?: string }; release: { by: string } };
  record.workshop.language = 'de';
  const at = RELEASABLE_AT[name] ?? '';
  const visit = await assessed(record, at);
  const place = { pack: 'REFERENCE-P1-1', number: 1, issue: 1, visit: name, before: [] };
  const attestation = { by: record.release.by, knowsOfNoHazard: true as const, at, read: visit.assessmentSha256 };
  const outcome = await seal(visit, attestation, place, FILES);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings, null, 1));
  return outcome.sealed;
}

describe.each(Object.keys(RELEASABLE_AT))('the pack of %s in German', (name) => {
  test('is released, fits its pages and says that it is German', async () => {
    const { pdf, documents } = await germanPack(name);
    const { info } = await (await openFile(pdf)).getMetadata();
    expect((info as { Language?: string }).Language).toBe('de');
    expect(documents.filter(({ html }) => !html.includes('lang="de"'))).toEqual([]);
    const pages = await pageTexts(pdf);
    expect(pages[0]).toContain(`Seite 1 von ${pages.length}`);
    expect(pages.join('\n')).not.toMatch(/Ausgabe 1 page|\(continued\)|Released by|undefined|\{\d\}/);
  });

  test('has its words, umlauts and figures in the text that is copied out of it', async () => {
    const text = (await pageTexts((await germanPack(name)).pdf)).join('\n');
    expect(text).toContain('Zusammenfassung für den Halter');
    expect(text).toContain('Höchstmasse');
    expect(text).toMatch(/\d,\d/);
    expect(text).toMatch(/\d\d\.\d\d\.20\d\d/);
  });
});
