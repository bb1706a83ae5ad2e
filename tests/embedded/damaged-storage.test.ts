import { readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bytesAt, digestOf, filesUnder } from '../../worker/embedded/moving/folder.ts';
import { type OpenEdition, openEdition } from '../kept/open-edition.ts';
import { type Outcome, runCommand } from './run-command.ts';

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
