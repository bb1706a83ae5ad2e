import { describe, expect, test } from 'vitest';
import { seal } from '../../../worker/core/core.ts';
import { sayIn } from '../../../worker/core/text/formatter.ts';
import * as m from '../../../worker/core/text/generated/messages.ts';
import { LANGUAGES, type Language } from '../../../worker/core/text/languages.ts';
import { localeOf } from '../../../worker/core/text/locale.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { openFile, pageTexts } from '../print/read-back.ts';
import { assessed, FILES, posted } from './fixture.ts';

/** A sealed pack of a fixture visit whose workshop writes a language. */
async function packIn(language: Language, name: string) {
  const record = posted(name) as { workshop: { language?: string }; release: { by: string } };
  record.workshop.language = language;
  const at = RELEASABLE_AT[name] ?? '';
  const visit = await assessed(record, at);
  const place = { pack: 'REFERENCE-P1-1', number: 1, issue: 1, visit: name, before: [] };
  const attestation = { by: record.release.by, knowsOfNoHazard: true as const, at, read: visit.assessmentSha256 };
  const outcome = await seal(visit, attestation, place, FILES);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings, null, 1));
  return outcome.sealed;
}

const NAMES = Object.keys(RELEASABLE_AT);

describe.each(LANGUAGES.flatMap((language) => NAMES.map((name) => [language, name] as const)))(
  'the pack in %s of %s',
  (language, name) => {
    test('is released, fits its pages and says in which language it is', async () => {
      const { pdf, documents } = await packIn(language, name);
      const { info } = await (await openFile(pdf)).getMetadata();
      expect((info as { Language?: string }).Language).toBe(language);
      expect(documents.filter(({ html }) => !html.includes(`lang="${language}"`))).toEqual([]);
      const pages = await pageTexts(pdf);
      const values = { page: 1, pages: pages.length };
      expect(pages[0]).toContain(sayIn(localeOf(language))(m.jobHeads_page, values));
      expect(pages.join('\n')).not.toMatch(/undefined|\[object|\{\w+\}/);
    });
  },
);

describe.each(NAMES)('the pack of %s in German', (name) => {
  test('has its words, umlauts and figures in the text that is copied out of it', async () => {
    const text = (await pageTexts((await packIn('de', name)).pdf)).join('\n');
    expect(text).not.toMatch(/Ausgabe 1 page|\(continued\)|Released by/);
    expect(text).toContain('Zusammenfassung für den Halter');
    expect(text).toContain('Höchstmasse');
    expect(text).toMatch(/\d,\d/);
    expect(text).toMatch(/\d\d\.\d\d\.20\d\d/);
  });
});
