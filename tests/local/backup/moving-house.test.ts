import { execFile } from 'node:child_process';
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { JSONWebKeySet } from 'jose';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { slipmark } from '../../../worker/client/client.ts';
import { checkFolder } from '../../../worker/local/backup/check-folder.ts';
import { exportFolder } from '../../../worker/local/backup/export-folder.ts';
import { bytesAt, digestOf, filesUnder, textAt } from '../../../worker/local/backup/folder.ts';
import { importFolder } from '../../../worker/local/backup/import-folder.ts';
import { ROOT } from '../../../worker/local/service/places.ts';
import { releaseAgain, SMALL, startTwo, type TwoDeployments } from './two-deployments.ts';

let two: TwoDeployments;
/** The export of the old deployment, and its keys as somebody kept them elsewhere. */
let folder: string;
let keys: JSONWebKeySet;

beforeAll(async () => {
  two = await startTwo(19_087);
  folder = join(two.folder, 'export');
  await exportFolder(two.old.client, folder);
  keys = JSON.parse(textAt(folder, 'keys.json'));
}, 180_000);

afterAll(() => two?.stop());

/** A copy of the export with something done to it. */
function copyWith(change: (copy: string) => void): string {
  const copy = join(two.folder, 'copy');
  rmSync(copy, { recursive: true, force: true });
  cpSync(folder, copy, { recursive: true });
  change(copy);
  return copy;
}

const contents = (at: string) => new Map(filesUnder(at).map((path) => [path, digestOf(bytesAt(at, path))]));

const PACK = 'aircraft/Q-SLM/packs/Q-SLM-P1-1';

describe('an export', () => {
  test('has everything of every aircraft, in files that a browser opens from a disk', () => {
    const files = filesUnder(folder);
    const attachments = files.filter((path) => path.startsWith('aircraft/Q-SLM/attachments/'));
    expect(new Set(attachments.map((path) => path.slice(-4)))).toEqual(new Set(['.jpg', '.pdf', '.png']));
    for (const path of ['index.html', 'style.css', 'keys.json', 'workshop.json', 'SHA256SUMS'])
      expect(files).toContain(path);
    for (const name of ['pack.pdf', 'record.json', 'manifest.json', 'documents/owner-summary.html'])
      for (const pack of ['Q-SLM-P1-1', 'Q-SLM-P1-2']) expect(files).toContain(`aircraft/Q-SLM/packs/${pack}/${name}`);
    for (const name of ['index.html', 'ledger.json', 'aircraft.json', 'visits/weighing.json'])
      expect(files).toContain(`aircraft/Q-WGT/${name}`);
    expect(textAt(folder, 'aircraft/Q-SLM/index.html')).toContain('Issued under the old name of the workshop');
  });

  test('leads only to files that it has', () => {
    const files = new Set(filesUnder(folder));
    const broken = [...files]
      .filter((path) => path.endsWith('.html'))
      .flatMap((path) =>
        [...textAt(folder, path).matchAll(/ (?:href|src)="([^"#]+)"/g)]
          .map(([, link = '']) => new URL(link, `file:///${path}`).pathname.slice(1))
          .filter((target) => !files.has(target))
          .map((target) => `${path} → ${target}`),
      );
    expect(broken).toEqual([]);
  });

  test('tells no key, no token and no address', () => {
    const secrets = [two.old.key, two.old.key.slice(-43), two.old.origin, 'wrapped', '/p/'];
    const text = filesUnder(folder)
      .filter((path) => !/\.(pdf|jpg|png)$/.test(path))
      .map((path) => textAt(folder, path))
      .join('\n');
    for (const secret of secrets) expect(text).not.toContain(secret);
  });

  test('of the same state is the same bytes, and of one aircraft a part of them', async () => {
    const again = join(two.folder, 'again');
    await exportFolder(two.old.client, again);
    expect(contents(again)).toEqual(contents(folder));
    const one = join(two.folder, 'one');
    await exportFolder(two.old.client, one, { only: 'Q-WGT' });
    const all = contents(folder);
    for (const [path, digest] of contents(one)) if (path.startsWith('aircraft/')) expect(all.get(path)).toBe(digest);
    expect(filesUnder(one).some((path) => path.includes('Q-SLM'))).toBe(false);
    await expect(exportFolder(two.old.client, one)).rejects.toThrow('must be empty');
  });

  test('needs no list of packs: its database may be lost', async () => {
    const client = {
      ...two.old.client,
      listPacks() {
        throw new Error('The list cannot be reached');
      },
    };
    const without = join(two.folder, 'without');
    await exportFolder(client, without);
    expect(contents(without)).toEqual(contents(folder));
  });

  test('satisfies sha256sum', async () => {
    await promisify(execFile)('sha256sum', ['--check', '--strict', '--quiet', 'SHA256SUMS'], { cwd: folder });
  });
});

describe('checkFolder()', () => {
  test('finds nothing in an export, and tells the end of every chain', async () => {
    const { defects, aircraft } = await checkFolder(folder, keys);
    expect(defects).toEqual([]);
    const chains = aircraft.map(({ registration, packs, head }) => [registration, packs, head?.seq]);
    expect(chains).toEqual([
      ['Q-SLM', 2, 7],
      ['Q-WGT', 0, 1],
    ]);
  });

  test('names every kind of file of which one byte is other', async () => {
    const kinds = new Map(
      filesUnder(folder).map((path) => [path.replaceAll(/Q-[A-Z]{3}(-P1-\d)?|[0-9a-f]{64}/g, '*'), path]),
    );
    expect(kinds.size).toBeGreaterThan(30);
    for (const path of kinds.values()) {
      const copy = copyWith((at) => flip(at, path));
      const { defects } = await checkFolder(copy, keys);
      const named = path === 'SHA256SUMS' ? defects.length > 0 : defects.some((defect) => defect.path === path);
      expect(named, path).toBe(true);
    }
  });

  test.each([
    [`${PACK}/pack.pdf`, 'differs from its seal'],
    [`${PACK}/record.json`, 'than the manifest names'],
    [`${PACK}/manifest.json`, 'than the ledger names'],
    [`${PACK}/documents.json`, 'than the ledger names'],
    ['aircraft/Q-SLM/visits/avionics-and-service.json', 'is not the record'],
    ['aircraft/Q-SLM/ledger.json', 'entry 3 cannot stand'],
    ['aircraft/Q-SLM/aircraft.json', 'says something else of Q-SLM-P1-1'],
  ])('finds %s altered also where the list of digests was altered with it', async (path, what) => {
    const copy = copyWith((at) => {
      if (path.endsWith('ledger.json') || path.endsWith('aircraft.json'))
        writeFileSync(
          join(at, path),
          textAt(at, path).replaceAll('old name', 'new name').replace('"seq": 3', '"seq": 4'),
        );
      else flip(at, path);
      sumAgain(at);
    });
    const { defects } = await checkFolder(copy, keys);
    const said = defects.filter((defect) => defect.path === path).map((defect) => defect.what);
    expect(said.join('\n')).toContain(what);
    await expect(importFolder(two.fresh.client, copy)).rejects.toThrow(path);
  });

  test('names what was taken away, put in, or is sealed by a key that it was not given', async () => {
    const lacking = copyWith((at) => rmSync(join(at, PACK, 'pack.pdf')));
    expect((await checkFolder(lacking, keys)).defects).toContainEqual({
      kind: 'altered',
      path: `${PACK}/pack.pdf`,
      what: 'is missing',
    });
    const more = copyWith((at) => writeFileSync(join(at, 'more.txt'), 'more'));
    expect((await checkFolder(more, keys)).defects.map(({ path }) => path)).toEqual(['more.txt']);
    const { defects } = await checkFolder(folder, { keys: [] });
    expect(new Set(defects.map(({ kind }) => kind))).toEqual(new Set(['unproved']));
  });
});

/** Changes one bit in the middle of a file. */
function flip(at: string, path: string): void {
  const bytes = bytesAt(at, path);
  const middle = Math.floor(bytes.length / 2);
  bytes[middle] = (bytes[middle] ?? 0) ^ 1;
  writeFileSync(join(at, path), bytes);
}

function sumAgain(at: string): void {
  const paths = filesUnder(at).filter((path) => path !== 'SHA256SUMS');
  writeFileSync(join(at, 'SHA256SUMS'), paths.map((path) => `${digestOf(bytesAt(at, path))}  ${path}\n`).join(''));
}

describe('npm run verify', () => {
  const run = async (...args: string[]): Promise<{ code: number; stdout: string }> => {
    const command = promisify(execFile)(process.execPath, [join(ROOT, 'worker/local/slipmark.js'), 'verify', ...args]);
    return command.then(
      ({ stdout }) => ({ code: 0, stdout }),
      ({ code, stdout }) => ({ code, stdout }),
    );
  };

  test('answers of a folder as of a file: 0 genuine, 1 altered, 2 unproved, 3 not readable', async () => {
    const [good, none] = [join(folder, 'keys.json'), join(two.folder, 'none.json')];
    writeFileSync(none, '{"keys":[]}');
    expect(await run(folder, '--keys', good)).toMatchObject({
      code: 0,
      stdout: expect.stringMatching(/GENUINE[\s\S]*No seal proves people\.json/),
    });
    expect(await run(folder, '--keys', none)).toMatchObject({ code: 2, stdout: expect.stringContaining('UNPROVED') });
    const copy = copyWith((at) => flip(at, `${PACK}/pack.pdf`));
    expect(await run(copy, '--keys', good)).toMatchObject({ code: 1, stdout: expect.stringContaining('ALTERED') });
    expect((await run(two.folder, '--keys', good)).code).toBe(3);
  });
});

/** A way to the service on which every third connection breaks, in turn before the request arrives and before its answer does. */
function breaking(): typeof fetch {
  let sent = 0;
  return async (url, init) => {
    const breaks = ++sent % 3 === 0;
    if (breaks && sent % 2 === 0) throw new TypeError('fetch failed', { cause: 'ECONNRESET' });
    const response = await fetch(url, init);
    if (!breaks) return response;
    await response.arrayBuffer();
    throw new TypeError('terminated', { cause: 'ECONNRESET' });
  };
}

describe('moving house', () => {
  test('is refused into a workshop of another name, which is told', async () => {
    await expect(importFolder(two.stranger, folder)).rejects.toThrow('Create a workshop demo there');
  });

  test('an import and an export again give the same bytes, and a release continues them', async () => {
    const { aircraft: imported } = await importFolder(slipmark({ ...two.fresh, fetch: breaking() }), folder);
    expect(imported).toEqual([
      { registration: 'Q-SLM', packs: 2, isNew: true, isRefused: false, remarks: [] },
      { registration: 'Q-WGT', packs: 0, isNew: true, isRefused: false, remarks: [] },
    ]);
    const again = join(two.folder, 'from-fresh');
    await exportFolder(two.fresh.client, again);
    expect(contents(again)).toEqual(contents(folder));
    const repeated = await importFolder(two.fresh.client, folder);
    expect([repeated.people, repeated.aircraft.map(({ isNew }) => isNew)]).toEqual([[], [false, false]]);

    const digest = digestOf(readFileSync(join(folder, 'aircraft/Q-SLM/packs/Q-SLM-P1-2/pack.pdf')));
    const { body } = await two.fresh.client.verify({ body: { pdfSha256: digest } });
    expect(body).toMatchObject({ verdict: 'genuine', pack: 'Q-SLM-P1-2', workshop: 'demo' });

    // The standing file follows from the chain, there as here.
    const files = [two.old.client, two.fresh.client].map(async (client) => {
      const { pack, record, sections, open, readings } = (await client.getNext({ registration: 'Q-SLM' })).body;
      return { pack, record, sections, open, readings, whole: (await client.getWholeRecord(SMALL)).body };
    });
    const [before, after] = await Promise.all(files);
    expect(after).toEqual(before);
    expect(after?.whole.aircraft).toEqual(after?.sections.aircraft);

    const next = await releaseAgain(two.fresh.client, { workshop: { name: 'Upper Meadow Aircraft' } });
    expect(next).toMatchObject({ pack: 'Q-SLM-P1-3', previous: 'Q-SLM-P1-2' });
    const continued = join(two.folder, 'continued');
    await exportFolder(two.fresh.client, continued);
    const bothKeys = JSON.parse(textAt(continued, 'keys.json'));
    expect(bothKeys.keys).toHaveLength(2);
    expect((await checkFolder(continued, bothKeys)).defects).toEqual([]);

    // What goes on from the folder is left as it is, and so are rights that ended since.
    const [jonas] = (await two.fresh.client.listPeople()).body.items;
    if (!jonas) throw new Error('The table of people must have come along');
    const { id, name, capacity, licence, scope, from } = jonas;
    const ended = { name, capacity, licence, scope, from, until: '2026-11-01' };
    await two.fresh.client.putPerson({ person: id, body: ended });
    // Nor does a folder that somebody altered give anybody a right: no seal proves its people.
    const altered = copyWith((at) => {
      const table = JSON.parse(textAt(at, 'people.json'));
      table.people.push({ ...table.people[0], id: 'mallory', name: 'Mallory' });
      const before = digestOf(bytesAt(at, 'people.json'));
      writeFileSync(join(at, 'people.json'), JSON.stringify(table));
      const sums = textAt(at, 'SHA256SUMS').replace(before, digestOf(bytesAt(at, 'people.json')));
      writeFileSync(join(at, 'SHA256SUMS'), sums);
    });
    const { aircraft, people } = await importFolder(two.fresh.client, altered);
    const [goesOn] = aircraft;
    expect(people).toEqual([
      'jonas stands otherwise in the table of people there, and was left so',
      'mallory is not in the table of people there, and was not entered',
    ]);
    expect(goesOn).toMatchObject({ isNew: false, isRefused: false });
    expect(goesOn?.remarks).toEqual(['Q-SLM: 2 later entries stand there, which the folder does not have']);
    expect((await two.fresh.client.listPeople()).body.items).toMatchObject([{ id, until: '2026-11-01' }]);
  });
});
