import { readdirSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { VisitRecord } from '../../../worker/client/client.ts';
import { bytesAt, digestOf, filesUnder } from '../../../worker/local/backup/folder.ts';
import { importFolder } from '../../../worker/local/backup/import-folder.ts';
import { smallRecord } from '../../faults/small-visit.ts';
import { type OpenEdition, openEdition } from '../../kept/open-edition.ts';
import { type Outcome, runCommand } from '../command/run-command.ts';

let edition: OpenEdition;

beforeAll(async () => {
  edition = await openEdition('first-edition', 20_187);
});

afterAll(() => edition?.close());

const run = (...args: string[]): Promise<Outcome> =>
  runCommand([...args, '--origin', edition.origin], { key: edition.key });

/** The file on the disk that holds a file of the export. */
function onDisk(path: string): string {
  const wanted = digestOf(bytesAt(edition.exported, path));
  const blobs = join(edition.folder, 'storage/blobs/slipmark-blobs/blobs');
  const name = readdirSync(blobs).find((file) => digestOf(readFileSync(join(blobs, file))) === wanted);
  if (!name) throw new Error(`${path} is not stored`);
  return join(blobs, name);
}

const WEIGHED = 'aircraft/Q-WGT/packs/Q-WGT-P1-2';
const TRIKE = 'aircraft/Q-TRN/packs/Q-TRN-P1-1';

describe('storage that was damaged on the disk', () => {
  beforeAll(() => {
    const pdf = onDisk(`${WEIGHED}/pack.pdf`);
    const bytes = readFileSync(pdf);
    const middle = bytes.length >> 1;
    bytes[middle] = (bytes[middle] ?? 0) ^ 1;
    writeFileSync(pdf, bytes);
    rmSync(onDisk(`${TRIKE}/documents.json`));
    truncateSync(onDisk(`${TRIKE}/record.json`), 100);
  });

  test('is named by scrub, file by file', async () => {
    const { code, stdout } = await run('scrub');
    expect(code, stdout).toBe(1);
    for (const file of ['pack.pdf of Q-WGT-P1-2', 'documents.json of Q-TRN-P1-1', 'record.json of Q-TRN-P1-1'])
      expect(stdout).toContain(`DAMAGED: ${file}`);
    expect(stdout.match(/DAMAGED/g)).toHaveLength(3);
  });

  test('is left out of an export, which has all else', async () => {
    const out = join(edition.folder, 'without');
    const { code, stdout } = await run('export', '--out', out);
    expect(code).toBe(1);
    for (const file of ['pack.pdf of Q-WGT-P1-2', 'documents.json of Q-TRN-P1-1', 'record.json of Q-TRN-P1-1'])
      expect(stdout).toContain(`DAMAGED: ${file}`);
    const files = new Set(filesUnder(out));
    for (const path of [`${WEIGHED}/record.json`, 'aircraft/Q-DEU/packs/Q-DEU-P1-1/pack.pdf', 'SHA256SUMS'])
      expect(files).toContain(path);
    expect(files).not.toContain(`${WEIGHED}/pack.pdf`);
  });

  test('is brought back by an import of an earlier export over it, to the same bytes', async () => {
    const { code, stdout, stderr } = await run('import', edition.exported);
    expect(code, stderr).toBe(0);
    expect(stdout).toContain('pack.pdf of Q-WGT-P1-2 was damaged or missing, and was brought back');
    expect((await run('scrub')).code).toBe(0);
    const out = join(edition.folder, 'whole');
    expect((await run('export', '--out', out)).code).toBe(0);
    const contents = (at: string) => new Map(filesUnder(at).map((path) => [path, digestOf(bytesAt(at, path))]));
    expect(contents(out)).toEqual(contents(edition.exported));
  });
});

test('an import into a workshop that has another ledger of one aircraft brings all the others', async () => {
  const body = smallRecord('Q-WGT', 'Of another workshop') as unknown as VisitRecord;
  await edition.empty.putVisit({ registration: 'Q-WGT', visit: 'other', body });
  const { aircraft: imported } = await importFolder(edition.empty, edition.exported);
  expect(imported.filter(({ isRefused }) => isRefused)).toEqual([
    {
      registration: 'Q-WGT',
      packs: 0,
      isNew: false,
      isRefused: true,
      remarks: ['Q-WGT: something else is kept of it there; nothing was brought'],
    },
  ]);
  expect(imported.filter(({ isNew }) => isNew).length).toBe(imported.length - 1);
});

test('a damaged ledger is said as damage, named by scrub and export, and stops nothing else', async () => {
  await edition.close();
  edition = await openEdition('first-edition', 20_187, (storage) => {
    const folder = join(storage, 'objects/slipmark-Ledger');
    const [ledger = ''] = readdirSync(folder).filter((name) => readFileSync(join(folder, name)).includes('Q-TRN-P1-1'));
    const file = join(folder, ledger.replace(/-wal$/, ''));
    for (const beside of ['-wal', '-shm']) rmSync(file + beside, { force: true });
    writeFileSync(file, Buffer.alloc(statSync(file).size, 7));
  });
  const answer = await edition.client.getAircraft({ registration: 'Q-TRN' }).catch((error: unknown) => error);
  expect(answer).toMatchObject({ status: 500, type: '/problems/damaged' });
  const scrubbed = await run('scrub');
  expect([scrubbed.code, scrubbed.stdout.match(/DAMAGED.*/g)], scrubbed.stderr).toEqual([
    1,
    ['DAMAGED: the ledger of Q-TRN is damaged'],
  ]);
  const out = join(edition.folder, 'rest');
  expect((await run('export', '--out', out)).stdout).toContain('DAMAGED: the ledger of Q-TRN is damaged');
  expect(filesUnder(out)).toContain('aircraft/Q-DEU/packs/Q-DEU-P1-1/pack.pdf');
});

/** Changes rows of every ledger of a storage that is not served. */
const inLedgers = (storage: string, statement: string): void => inObjects(storage, 'Ledger', 'packs', statement);

function inObjects(storage: string, kind: 'Ledger' | 'Workshop', table: string, statement: string): void {
  const folder = join(storage, `objects/slipmark-${kind}`);
  for (const name of readdirSync(folder).filter((file) => /^[0-9a-f]+\.sqlite$/.test(file))) {
    const database = new DatabaseSync(join(folder, name));
    const hasTable = database.prepare('SELECT 1 FROM sqlite_master WHERE name = ?').all(table).length > 0;
    if (hasTable) database.exec(statement);
    database.close();
  }
}

test('rows that were changed on the disk are named by scrub and export, and a record is brought back', async () => {
  await edition.close();
  edition = await openEdition('first-edition', 20_187, (storage) => {
    inLedgers(storage, `UPDATE visits SET record = replace(record, '"tare"', '"tear"') WHERE visit = 'weighing'`);
    inLedgers(storage, `UPDATE packs SET summary = replace(summary, 'Rufus', 'Rofus') WHERE pack = 'Q-WGT-P1-2'`);
    inLedgers(storage, `UPDATE packs SET supersededBy = NULL WHERE pack = 'Q-WGT-P1-1'`);
  });
  const scrubbed = await run('scrub');
  expect(scrubbed.code, scrubbed.stderr).toBe(1);
  const record = 'the record of visit weighing of Q-WGT is damaged';
  const rows = [
    'Q-WGT-P1-1 of Q-WGT is not what the chain says',
    'releasedBy in the list of packs of the aircraft is not what Q-WGT-P1-2 was sealed with',
  ];
  const found = (scrubbed.stdout.match(/DAMAGED: .*/g) ?? []).map((line) =>
    line.replace(/^DAMAGED: |: slipmark.*/g, ''),
  );
  expect(found.sort()).toEqual([...rows, record].sort());
  const out = join(edition.folder, 'without-record');
  expect((await run('export', '--out', out)).stdout).toContain(`DAMAGED: ${record} in the service`);
  expect(filesUnder(out)).toContain(`${WEIGHED}/pack.pdf`);
  expect(filesUnder(out)).not.toContain('aircraft/Q-WGT/visits/weighing.json');
  expect((await run('import', edition.exported)).stdout).toContain(
    'Q-WGT: the record of visit weighing was damaged, and was brought back',
  );
  expect((await run('scrub')).stdout.match(/DAMAGED/g)).toHaveLength(rows.length);
});

test('rows of the workshop that were changed on the disk are named by scrub and export, and end neither', async () => {
  await edition.close();
  edition = await openEdition('first-edition', 20_187, (storage) => {
    const spoil = (table: string, statement: string) => inObjects(storage, 'Workshop', table, statement);
    spoil(
      'keys',
      `INSERT INTO keys (key, keySha256, label, scopes, createdAt) VALUES ('zz', 'zz', 'l', '["links"', 'x')`,
    );
    spoil('sealKeys', `UPDATE sealKeys SET publicJwk = replace(publicJwk, '"x":"', '"x":"AAAA')`);
  });
  const scrubbed = await run('scrub');
  expect([scrubbed.code, scrubbed.stdout.match(/DAMAGED: .*/g)], scrubbed.stderr).toEqual([
    1,
    expect.arrayContaining([
      'DAMAGED: a seal key of the workshop is damaged',
      'DAMAGED: the rights of the key zz are damaged: revoke it and make another',
    ]),
  ]);
  const out = join(edition.folder, 'without-keys');
  expect((await run('export', '--out', out)).stdout).toContain('DAMAGED: a seal key of the workshop');
  expect((await run('import', edition.exported)).code).toBe(0);
  expect((await run('scrub')).stdout.match(/DAMAGED: .*/g)).toHaveLength(1);
});
