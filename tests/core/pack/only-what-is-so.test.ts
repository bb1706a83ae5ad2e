import { describe, expect, test } from 'vitest';
import { packContext } from '../../../worker/core/pack/context.ts';
import { packDocuments } from '../../../worker/core/pack/pack-documents.ts';
import { patched } from '../../json-patch.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { assessed, posted } from './fixture.ts';

type Patch = Parameters<typeof patched>[1];

/** The documents of a changed fixture, by id, as text without markup. */
async function printed(name: string, patch: Patch): Promise<ReadonlyMap<string, string>> {
  const at = RELEASABLE_AT[name] ?? '';
  const assessment = await assessed(patched(posted(name), patch), at);
  const context = packContext(assessment, { of: { draftAt: at }, recordSha256: assessment.recordSha256 });
  const { documents } = await packDocuments(context);
  const plain = (html: string): string => html.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');
  return new Map(documents.map(({ id, html }) => [id, plain(html)]));
}

const ABSENT = /Not part of this visit: [^.]*inspection of the whole aircraft/;

describe('a pack says only what is so', () => {
  test('of controls that were checked without an inspection', async () => {
    const checked = await printed('nose-wheel-full', [{ op: 'remove', path: '/inspection' }]);
    expect(checked.get('inspection-record')).toMatch(/Control checks .*One person in the seat/);
    expect(checked.get('inspection-record')).not.toMatch(/Tasks|Close-out|tools/);
    expect(checked.get('cover')).toMatch(ABSENT);
    const without = await printed('nose-wheel-full', [
      { op: 'remove', path: '/inspection' },
      { op: 'remove', path: '/controls' },
    ]);
    expect(without.has('inspection-record')).toBe(false);
    expect(without.get('cover')).toMatch(ABSENT);
    const whole = await printed('nose-wheel-full', []);
    expect(whole.get('inspection-record')).toMatch(/Inspection record .*Close-out/);
    expect(whole.get('cover')).not.toMatch(ABSENT);
  });

  test('of flights before the release, to the owner and in the log book too', async () => {
    const flown = await printed('helicopter', []);
    const line = /V1, 14 Oct 2026, check flight, 14 min, 2 landings, satisfactory/;
    for (const id of ['owner-summary', 'log-book-inserts', 'modification-m1']) expect(flown.get(id)).toMatch(line);
    expect(flown.get('flights-and-measurements')).toMatch(/Ines Dahl .*Landings: 5126 at arrival, 5128 at release/);
    const owner = (await printed('four-seat-tourer', [])).get('owner-summary');
    expect(owner).toMatch(
      /Flight test of M1 outstanding; pilot: The owner, alone or with Max Ellery\. Until then: Day VFR/,
    );
    expect(owner).not.toMatch(/Flown before/);
  });

  test('of radio checks alone: radio and person, and no address', async () => {
    const radio = await printed('four-seat-tourer', [
      ...['altimeters', 'staticSystems', 'pitotSystems'].map((part) => ({
        op: 'remove' as const,
        path: `/surveillance/${part}`,
      })),
    ]);
    const document = radio.get('radio-and-surveillance-record');
    expect(document).toMatch(/E1 Navigator .*Tested by .*Prue Hartnell, Avionics technician .*21 Jul 2026/);
    expect(document).not.toMatch(/Aircraft address|Altimeter test|Pitot/);
  });

  test('of limits of a type that allow loadings outside the envelope, to the owner too', async () => {
    const computes = /limits of the type allow loadings outside the envelope/;
    for (const name of ['four-seat-tourer', 'nose-wheel-full']) {
      const documents = await printed(name, []);
      expect(computes.test(documents.get('owner-summary') ?? ''), name).toBe(
        computes.test(documents.get('loading-sheet') ?? ''),
      );
    }
    expect((await printed('four-seat-tourer', [])).get('owner-summary')).toMatch(computes);
  });

  test('of water, only to a glider that has tanks for it', async () => {
    const water = /Wasser in beiden Flügeln/;
    expect((await printed('glider', [])).get('owner-summary')).toMatch(water);
    const { aircraft } = posted('glider') as { aircraft: { stations: { kind: string }[] } };
    const stations = aircraft.stations.filter(({ kind }) => kind !== 'water');
    const dry = await printed('glider', [
      { op: 'replace', path: '/aircraft/stations', value: stations },
      { op: 'remove', path: '/aircraft/cockpitStates' },
    ]);
    expect(dry.get('owner-summary')).not.toMatch(water);
    expect(dry.get('loading-sheet')).not.toMatch(/Inhalt der Tanks/);
  });

  test('of an engine that runs during a check of the radio', async () => {
    const radio = (documents: ReadonlyMap<string, string>): string =>
      documents.get('radio-and-surveillance-record') ?? '';
    expect(radio(await printed('nose-wheel-full', []))).toMatch(/Two-way, engine running/);
    const engineless = await printed('nose-wheel-full', [
      { op: 'replace', path: '/aircraft/class', value: 'glider' },
      { op: 'remove', path: '/aircraft/engine' },
    ]);
    expect(radio(engineless)).toMatch(/Two-way/);
    expect(radio(engineless)).not.toMatch(/engine running/);
  });
});
