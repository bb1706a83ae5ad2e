import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { SCHEMA_VERSION, upgrade } from '../../worker/core/record/upgrades.ts';
import { exportFolder } from '../../worker/local/backup/export-folder.ts';
import { bytesAt, digestOf, filesUnder } from '../../worker/local/backup/folder.ts';
import { importFolder } from '../../worker/local/backup/import-folder.ts';
import { runCommand } from '../local/command/run-command.ts';
import { editionNames } from './edition.ts';
import { type OpenEdition, openEdition } from './open-edition.ts';

const contents = (at: string) => new Map(filesUnder(at).map((path) => [path, digestOf(bytesAt(at, path))]));

// What anybody was ever given must open for ever: links, packs and exports of earlier versions, with today's code.
describe.each(editionNames().map((name, index) => ({ name, port: 19_687 + 100 * index })))('edition $name', (made) => {
  let edition: OpenEdition;
  let packs: string[];

  beforeAll(async () => {
    edition = await openEdition(made.name, made.port);
    packs = filesUnder(edition.exported).filter((path) => path.endsWith('/pack.pdf'));
  });

  afterAll(() => edition?.close());

  test('its storage is served: every link says what stands', async () => {
    for (const { path, pack, headline } of edition.links) {
      const response = await fetch(edition.origin + path);
      expect(response.status, pack).toBe(headline === null ? 404 : 200);
      if (headline !== null) expect(await response.text(), pack).toContain(`<h1>${headline}</h1>`);
    }
  });

  test('what the first pack of an aircraft left open stands after its second, whatever that says of it', async () => {
    const { body } = await edition.client.getDue({ registration: 'Q-SLM' });
    expect(body.pack).toBe('Q-SLM-P2-1');
    expect(body.deferred.map(({ openItem }) => openItem)).toEqual(['Q-SLM-P1/F4']);
    expect(body.items.length).toBeGreaterThan(10);
    const { path = '' } = edition.links.find(({ pack }) => pack === 'Q-SLM-P2-1') ?? {};
    expect(await (await fetch(edition.origin + path)).text()).toMatch(
      /<dt>Next due<\/dt><dd>[^<]*1230\.0\u00a0h, airframe/,
    );
  });

  test('its storage is exported as it was then', async () => {
    const out = join(edition.folder, 'as-then');
    await exportFolder(edition.client, out);
    expect(contents(out)).toEqual(contents(edition.exported));
  });

  test('every pack is known to the service, and genuine by the command', async () => {
    expect(packs.length).toBeGreaterThan(5);
    for (const path of packs) {
      const pdfSha256 = digestOf(bytesAt(edition.exported, path));
      const { body } = await edition.client.verify({ body: { pdfSha256 } });
      expect(path).toContain(`/${body.pack}/`);
      const keys = join(edition.exported, 'keys.json');
      const { code, stdout } = await runCommand(['verify', join(edition.exported, path), '--keys', keys]);
      expect([code, stdout.split(':')[0]], path).toEqual([0, 'GENUINE']);
    }
  });

  test('its export goes into an empty service, and out again with the same bytes', async () => {
    const imported = await importFolder(edition.empty, edition.exported);
    expect([...imported.people, ...imported.aircraft.flatMap(({ remarks }) => remarks)]).toEqual([]);
    const again = join(edition.folder, 'again');
    await exportFolder(edition.empty, again);
    expect(contents(again)).toEqual(contents(edition.exported));
  });

  test.each([
    ['Q-OPN', 'open'],
    ['Q-DEU', '2026-11'],
  ])('the record of %s that it keeps is amended as it is, and in the present version', async (registration, visit) => {
    const at = { registration, visit };
    const { body: kept, etag } = await edition.client.getVisit(at);
    const amend = (ifMatch: string | undefined, schemaVersion: object, summary: string) =>
      edition.client.patchVisit({ ...at, ifMatch, body: { ...schemaVersion, visit: { summary } } });
    const amended = (record: object, summary: string) => ({ ...record, visit: { ...kept.visit, summary } });
    const first = await amend(etag, {}, 'Amended as it is');
    expect((await edition.client.getVisit(at)).body).toEqual(amended(kept, 'Amended as it is'));
    await amend(`"${first.body.recordSha256}"`, { schemaVersion: SCHEMA_VERSION }, 'Upgraded');
    expect((await edition.client.getVisit(at)).body).toEqual(amended(upgrade(kept) as object, 'Upgraded'));
    expect((await edition.client.getAssessment(at)).body.results.schedule?.massKg).toBeGreaterThan(100);
  });
});
