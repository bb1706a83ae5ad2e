import { describe, expect, test } from 'vitest';
import { seal } from '../../worker/pipeline.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { openFile, pageTexts } from '../print/read-back.ts';
import { assessed, FILES, posted } from './fixture.ts';

interface GermanRecord {
  workshop: { language?: string };
  release: { by: string };
  weighing: { itemsAboard: { name: string }[] };
  baseline: { history: { reason: string }[] };
}

/** A sealed pack of a fixture visit whose workshop writes German. */
async function germanPack(name: string, change: (record: GermanRecord) => void = () => undefined) {
  const record = posted(name) as Record<string, unknown> & GermanRecord;
  change(record);
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

test('texts of the record that read like ours are printed as they were written', async () => {
  const names = ['Fuel, jerrycan (borrowed)', 'Not on the list', 'Scale S1, error limit of its certificate'];
  const { documents } = await germanPack('nose-wheel-full', ({ weighing, baseline }) => {
    const [item] = weighing.itemsAboard;
    weighing.itemsAboard = names.map((name) => ({ ...item, name, mass: 0.1 }));
    for (const entry of baseline.history) entry.reason = 'Weighed';
  });
  const htmlOf = (id: string): string => documents.find((document) => document.id === id)?.html ?? '';
  const report = htmlOf('weighing-report');
  for (const name of names) {
    expect(report).toContain(`Ab: ${name}<`);
    expect(report).toContain(`${name}, Masse wie angegeben<`);
  }
  expect(report).not.toMatch(/Kraftstoff, jerrycan|Waage S1, Fehlergrenze ihres Kalibrierscheins, Masse/);
  const schedule = htmlOf('weight-and-balance-schedule');
  expect(schedule).toContain('>Weighed<');
  expect(schedule).toContain('>Gewogen<');
});
