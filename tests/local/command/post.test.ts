import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Slipmark, slipmark, type VisitRecord } from '../../../worker/client/client.ts';
import { bundle } from '../../../worker/local/service/bundle.ts';
import { type Embedded, startEmbedded } from '../../../worker/local/service/embedded.ts';
import { freePort } from '../../../worker/local/service/free-port.ts';
import { ROOT } from '../../../worker/local/service/places.ts';
import { redated } from '../../../worker/local/service/redated.ts';
import { readFixture } from '../../read-fixture.ts';
import { type Outcome, runCommand } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'slipmark-'));
const secrets = { adminSecret: 'secret-of-the-post-test', sealSecret: 'seal-secret-of-the-post-test' };
const file = join(folder, 'weighing.json');
const VISIT = { registration: 'Q-WGT', visit: 'weighing' };
let service: Embedded;
let client: Slipmark;
let key: string;
let record: VisitRecord;

beforeAll(async () => {
  const port = await freePort(19_620);
  service = await startEmbedded({ script: await bundle(), storage: join(folder, 'storage'), port, ...secrets });
  const deployment = slipmark({ origin: service.origin, key: secrets.adminSecret });
  key = (await deployment.createWorkshop({ body: { id: 'post', name: 'A workshop' } })).body.key.secret;
  client = slipmark({ origin: service.origin, key });
  record = redated(readFixture('visits/weighing-only') as VisitRecord, new Date());
}, 90_000);

afterAll(async () => {
  await service?.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Writes the record with changes, and posts it. */
async function post(changes: object, ...args: string[]): Promise<Outcome> {
  const reasonForIssue = `Changed: ${JSON.stringify(changes).slice(0, 100)}`;
  const release = { ...record.release, reasonForIssue };
  writeFileSync(file, JSON.stringify({ ...record, release, ...changes }, null, 2));
  return runCommand(['post', file, '--origin', service.origin, ...args], { key });
}

const renamed = (name: string) => ({ workshop: { ...record.workshop, name } });

describe('slipmark post', () => {
  test('keeps a record under the name of its file, and again without a change', async () => {
    for (let times = 0; times < 2; times++)
      expect(await post({})).toMatchObject({ code: 0, stdout: expect.stringContaining('Nothing blocks the release') });
    expect((await client.listVisits({ registration: 'Q-WGT' })).body.items).toMatchObject([
      { visit: 'weighing', version: 1 },
    ]);
  });

  test('replaces only the record that is named, also under the older --over', async () => {
    const { etag } = await client.getVisit(VISIT);
    const digest = etag?.replaceAll('"', '') ?? '';
    const refused = await post(renamed('Upper Meadow'));
    expect(refused).toMatchObject({ code: 1, stderr: expect.stringContaining(`--replace ${digest}`) });
    expect((await post(renamed('Upper Meadow'), '--replace', digest)).code).toBe(0);
    expect((await post(renamed('Lower Meadow'), '--replace', digest)).code).toBe(1);
    expect((await post(renamed('Lower Meadow'), '--over', 'kept')).code).toBe(0);
    expect((await client.getVisit(VISIT)).body.workshop.name).toBe('Lower Meadow');
  });

  test('lists what blocks the release, and does not release it', async () => {
    const without = { weighing: { ...record.weighing, points: record.weighing?.points.slice(0, 2) } };
    const args = ['--visit', 'other', '--json', '--release-as', 'rufus', '--knows-of-no-hazard'];
    const { code, stdout } = await post(without, ...args);
    expect(code).toBe(1);
    const { isReleasable, findings, released } = JSON.parse(stdout);
    expect([isReleasable, released]).toEqual([false, undefined]);
    expect(findings[0]).toMatchObject({ severity: 'blocks', line: expect.any(Number), column: expect.any(Number) });
  });

  test('answers 2 for a record that does not fit, and sends nothing', async () => {
    const { code, stdout } = await post({ colour: 'red' }, '--visit', 'red');
    expect(code).toBe(2);
    expect(stdout).toContain('RECORD_KEY_UNKNOWN  /colour');
    await expect(client.getVisit({ ...VISIT, visit: 'red' })).rejects.toMatchObject({ status: 404 });
  });

  test('uploads the files that the record names, and lists the missing ones', async () => {
    const { attachments } = readFixture('visits/nose-wheel-full') as VisitRecord;
    const named = { attachments: attachments?.slice(0, 2) };
    const args = ['--visit', 'files', '--json'];
    const lacking = JSON.parse((await post(named, ...args)).stdout).lacking;
    expect(lacking).toMatchObject([{ why: 'not uploaded' }, { why: 'not uploaded' }]);
    const fixtures = ['--attachments', join(ROOT, 'fixtures/attachments'), '--progress'];
    const { stdout, stderr } = await post(named, ...args, ...fixtures);
    expect(JSON.parse(stdout).lacking).toEqual([]);
    expect(stderr).toContain('Uploading loom-on-its-side.jpg, 1 of 2');
    expect((await client.getAttachment({ sha256: attachments?.[0]?.sha256 ?? '' })).body.ok).toBe(true);
  });

  test('releases only with the statement, and gives the link of the owner', async () => {
    const released = renamed('Lower Meadow');
    expect(await post(released, '--release-as', 'rufus')).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('--release-as needs --knows-of-no-hazard'),
    });
    const { code, stdout } = await post(released, '--release-as', 'rufus', '--knows-of-no-hazard');
    expect(code).toBe(0);
    expect(stdout).toContain('Released: Q-WGT-P1-1');
    const link = /link \(shown once\): (\S+)/.exec(stdout)?.[1] ?? '';
    expect(await (await fetch(link)).text()).toContain('Q-WGT');
  });

  test('keeps a small record that names the standing file; assess and pack read it with the response of …/next', async () => {
    const { people, visit, release } = record;
    const next = (await client.getNext({ registration: 'Q-WGT' })).body;
    writeFileSync(join(folder, 'next.json'), JSON.stringify(next));
    const small = join(folder, 'small.json');
    writeFileSync(small, JSON.stringify({ ...next.record, people, visit, release }));
    const alone = await runCommand(['assess', small]);
    expect(alone).toMatchObject({ code: 2, stdout: expect.stringContaining('STANDING_FILE_UNKNOWN') });
    const assessed = await runCommand(['assess', small, '--next', join(folder, 'next.json'), '--json']);
    expect(JSON.parse(assessed.stdout).results.schedule).toMatchObject({ basis: 'computed' });
    const out = join(folder, 'small');
    await runCommand(['pack', small, '--next', join(folder, 'next.json'), '--out', out]);
    expect(JSON.parse(readFileSync(join(out, 'Q-WGT-record.json'), 'utf8')).aircraft).toEqual(record.aircraft);
    const args = ['--origin', service.origin, '--visit', 'small', '--json'];
    const { stdout } = await runCommand(['post', small, ...args], { key });
    expect(JSON.parse(stdout)).toMatchObject({ visit: 'small', version: 1 });
    const wrong = await runCommand(['assess', small, '--next', small]);
    expect(wrong).toMatchObject({ code: 2, stderr: expect.stringContaining('must be a response of GET') });
  });

  test('begin reads the next record from the sealed pack, for another workshop', async () => {
    const [pdf, keys] = [join(folder, 'pack.pdf'), join(folder, 'keys.json')];
    writeFileSync(pdf, (await client.getPackPdf({ pack: 'Q-WGT-P1-1' })).bytes);
    writeFileSync(keys, JSON.stringify((await client.getSealKeys({ workshop: 'post' })).body));
    const begun = await runCommand(['begin', pdf, '--keys', keys]);
    expect(begun.code).toBe(0);
    const { record: beginning, sections } = JSON.parse(begun.stdout);
    expect(sections.aircraft).toEqual(record.aircraft);
    const deployment = slipmark({ origin: service.origin, key: secrets.adminSecret });
    const other = (await deployment.createWorkshop({ body: { id: 'other', name: 'Another' } })).body.key.secret;
    const { people, visit, release, workshop } = record;
    const body = { ...beginning, people, visit, release, workshop: { ...workshop, name: 'Another' } };
    const { findings } = (await slipmark({ origin: service.origin, key: other }).putVisit({ ...VISIT, body })).body;
    expect(findings.filter(({ code }) => code.startsWith('STANDING'))).toEqual([]);
    writeFileSync(keys, JSON.stringify({ keys: [] }));
    expect(await runCommand(['begin', pdf, '--keys', keys])).toMatchObject({
      code: 1,
      stderr: expect.stringContaining('not genuine'),
    });
  });

  test('answers 1 to a key that may not, and 3 where nobody answers', async () => {
    expect(await post({}, '--key', 'nonsense')).toMatchObject({ code: 1, stderr: expect.stringContaining('401') });
    const { code, stderr, stdout } = await runCommand(['post', file, '--origin', 'http://127.0.0.1:9', '--json'], {
      key,
    });
    expect([code, JSON.parse(stdout).error.status]).toEqual([3, 0]);
    expect(stderr).toContain('http://127.0.0.1:9/v1/aircraft/Q-WGT/visits/weighing: The service cannot be reached');
  });
});

describe('slipmark reindex', () => {
  test('lists every pack of every aircraft, also under its older name', async () => {
    expect((await post({}, '--over', 'kept', '--release-as', 'rufus', '--knows-of-no-hazard')).code).toBe(0);
    const { items } = (await client.listAircraftPacks({ registration: 'Q-WGT' })).body;
    expect(items.length).toBeGreaterThan(0);
    for (const [name, notice] of [
      ['reindex', ''],
      ['relist', 'slipmark relist is now slipmark reindex; the old name still works.\n'],
    ] as const) {
      const { code, stdout, stderr } = await runCommand([name, '--json', '--origin', service.origin], { key });
      expect([code, JSON.parse(stdout)]).toEqual([0, { aircraft: 1, packs: items.length, mended: 0 }]);
      expect(stderr).toBe(notice);
    }
  });
});

test('a command that released says so, also where the link is refused', async () => {
  const body = { label: 'no links', scopes: ['records' as const, 'release' as const] };
  const { secret } = (await client.makeKey({ body })).body;
  const args = ['--release-as', 'rufus', '--knows-of-no-hazard', '--visit', 'once-more', '--origin', service.origin];
  writeFileSync(file, JSON.stringify({ ...record, aircraft: { ...record.aircraft, registration: 'Q-LNK' } }));
  const { code, stdout, stderr } = await runCommand(['post', file, ...args], { key: secret });
  expect(code).toBe(1);
  expect(stdout).toContain('Released: Q-LNK-P1-1, by Rufus Tallant');
  expect(stderr).toContain('Q-LNK-P1-1 is released, but its link for the owner failed');
});
