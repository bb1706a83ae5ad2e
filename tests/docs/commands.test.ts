import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundle } from '../../worker/embedded/bundle.ts';
import { type Embedded, startEmbedded } from '../../worker/embedded/embedded.ts';
import { freePort } from '../../worker/embedded/free-port.ts';
import { ROOT } from '../../worker/embedded/places.ts';
import { redated } from '../../worker/embedded/redated.ts';
import { verifyFile } from '../../worker/seal/verify.ts';
import { readFixture } from '../read-fixture.ts';
import { fencedBlocks } from './fenced-blocks.ts';

const WRITTEN_ORIGIN = 'http://127.0.0.1:8787';
/** Where the page on moving house writes that the new deployment is. */
const WRITTEN_NEW_ORIGIN = 'http://127.0.0.1:8788';
const ADMIN_SECRET = 'secret-of-the-commands-test';

const storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
/** Where the reader stands: it has the record that the commands send, as if its visit had ended yesterday. */
const folder = join(storage, 'reader');
let service: Embedded;
let newDeployment: Embedded;
let key: string;

beforeAll(async () => {
  const record = join(folder, 'fixtures/visits/weighing-only.json');
  mkdirSync(dirname(record), { recursive: true });
  cpSync(join(ROOT, 'fixtures/attachments'), join(folder, 'fixtures/attachments'), { recursive: true });
  const visit = readFixture('visits/weighing-only') as Parameters<typeof redated>[0];
  writeFileSync(record, JSON.stringify(redated(visit, new Date())));
  symlinkSync(join(ROOT, 'worker'), join(folder, 'worker'));
  const script = await bundle();
  service = await started(script, 'service', 18_987);
  newDeployment = await started(script, 'new', 19_487);
  const answer = await fetch(`${service.origin}/v1/workshops`, {
    method: 'POST',
    headers: { Authorization: `Bearer ${ADMIN_SECRET}`, 'Content-Type': 'application/json' },
    body: JSON.stringify({ id: 'reader', name: 'A reader of the documentation' }),
  });
  key = ((await answer.json()) as { key: { secret: string } }).key.secret;
}, 60_000);

async function started(script: string, name: string, port: number): Promise<Embedded> {
  const secrets = { adminSecret: ADMIN_SECRET, sealSecret: `seal-secret-of-the-${name}` };
  return startEmbedded({ script, storage: join(storage, name), port: await freePort(port), ...secrets });
}

afterAll(async () => {
  await service?.stop();
  await newDeployment?.stop();
  rmSync(storage, { recursive: true, force: true });
});

/** The scripts of the project, run where the reader stands. */
const SLIPMARK = `'${process.execPath}' '${join(ROOT, 'worker/embedded/slipmark.js')}'`;
const NPM = `npm() { local name="$2"; shift 3; ${SLIPMARK} "$name" "$@"; }\nnpx() { local name="$1"; shift; if [ "$name" = node ]; then '${process.execPath}' "$@"; else ${SLIPMARK} "$@"; fi; }`;

/** Runs every command of a page in one shell; a call that is refused ends it. */
async function run(page: string): Promise<string> {
  const commands = fencedBlocks(page)
    .join('\n')
    .replaceAll(WRITTEN_ORIGIN, service.origin)
    .replaceAll(WRITTEN_NEW_ORIGIN, newDeployment.origin);
  const script = `curl() { command curl -f "$@"; }\n${NPM}\n${commands}`;
  const env = { ...process.env, KEY: key, ADMIN: ADMIN_SECRET };
  const { stdout } = await promisify(execFile)('bash', ['-euo', 'pipefail', '-c', script], { cwd: folder, env });
  return stdout;
}

const isPdf = (name: string): boolean => readFileSync(join(folder, name)).subarray(0, 5).toString() === '%PDF-';

describe('the commands of the documentation', { timeout: 60_000 }, () => {
  test('start: a record is kept and assessed, and its draft is a PDF', async () => {
    const output = await run('start');
    expect(output).toContain('"recordSha256"');
    expect(output).toContain('"findings"');
    expect(isPdf('draft.pdf')).toBe(true);
  });

  test('guide: from the first record to a link that opens', async () => {
    const output = await run('guide');
    expect(output).toContain('WEIGHED_OUTDOORS');
    expect(isPdf('Q-WGT-P1-1.pdf')).toBe(true);
    expect(output).toContain('"verdict": "genuine"');
    const keys = JSON.parse(readFileSync(join(folder, 'keys.json'), 'utf8'));
    const verdict = await verifyFile(new Uint8Array(readFileSync(join(folder, 'Q-WGT-P1-1.pdf'))), keys);
    expect(verdict.kind).toBe('genuine');
    const link = /"url": *"([^"]+)"/.exec(output)?.[1] ?? '';
    const page = await fetch(link);
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('Q-WGT');
  });

  test('moving-house: what was released is exported, proved, imported, and exported again the same', async () => {
    const output = await run('moving-house');
    expect(output).toContain('GENUINE: every pack of reader');
    expect(output).toContain('Q-WGT: 1 packs imported');
    const headers = { 'Content-Type': 'application/json' };
    const digest = createHash('sha256')
      .update(readFileSync(join(folder, 'Q-WGT-P1-1.pdf')))
      .digest('hex');
    const body = JSON.stringify({ pdfSha256: digest });
    const answer = await fetch(`${newDeployment.origin}/v1/verifications`, { method: 'POST', headers, body });
    expect(await answer.json()).toMatchObject({ verdict: 'genuine', workshop: 'reader' });
  });

  test('tools: the command assesses and posts, tables go both ways, the client amends', async () => {
    const output = await run('tools');
    expect(output.match(/Nothing stands against the release/g)).toHaveLength(3);
    expect(readFileSync(join(folder, 'points.csv'), 'utf8')).toContain('readings 1 (lb)');
    expect(JSON.parse(readFileSync(join(folder, 'equipment.json'), 'utf8'))).toMatchObject([{ id: 'E14', mass: 1.2 }]);
    const [given, amended] = ['fixtures/visits/weighing-only.json', 'amended.json'];
    expect(JSON.parse(readFileSync(join(folder, amended), 'utf8'))).toEqual(
      JSON.parse(readFileSync(join(folder, given), 'utf8')),
    );
    expect(output).toMatch(/^Q-WGT-P1-1 \d{4}-/m);
    expect(output).toContain('true 0\n412 /problems/precondition-failed 0');
  });
});
