import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Slipmark, slipmark } from '../../../worker/client/client.ts';
import { canonicalJson } from '../../../worker/core/pack/canonical-json.ts';
import { upgrade } from '../../../worker/core/record/upgrades.ts';
import { bundle } from '../../../worker/local/service/bundle.ts';
import { type Embedded, startEmbedded } from '../../../worker/local/service/embedded.ts';
import { freePort } from '../../../worker/local/service/free-port.ts';
import { ROOT } from '../../../worker/local/service/places.ts';
import { RELEASABLE_AT } from '../../core/gate/assess-record.ts';
import { readFixture } from '../../read-fixture.ts';
import { withLaterFields } from '../../with-later-fields.ts';
import { runCommand } from './run-command.ts';

const OLD_FILE = join(ROOT, 'fixtures/records/version-1/nose-wheel-full.json');
const AT = ['--at', RELEASABLE_AT['nose-wheel-full'] ?? ''];
const ATTACHMENTS = ['--attachments', join(ROOT, 'fixtures/attachments')];
const secrets = { adminSecret: 'secret-of-the-version-test', sealSecret: 'seal-secret-of-the-version-test' };

/** The record as a workshop of that time has it, with what later rules require. */
let OLD: string;
let folder: string;
let service: Embedded;
let client: Slipmark;
let key: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'slipmark-'));
  OLD = join(folder, 'nose-wheel-full.json');
  const old = withLaterFields(jsonOf(readFileSync(OLD_FILE, 'utf8')), readFixture('visits/nose-wheel-full'));
  writeFileSync(OLD, JSON.stringify(old, null, 2));
  const port = await freePort(19_640);
  service = await startEmbedded({ script: await bundle(), storage: join(folder, 'storage'), port, ...secrets });
  const deployment = slipmark({ origin: service.origin, key: secrets.adminSecret });
  key = (await deployment.createWorkshop({ body: { id: 'older', name: 'A workshop' } })).body.key.secret;
  client = slipmark({ origin: service.origin, key });
}, 90_000);

afterAll(async () => {
  await service?.stop();
  rmSync(folder, { recursive: true, force: true });
});

const jsonOf = (text: string) => JSON.parse(text);

describe('a file with a record of version 1', () => {
  test('is assessed', async () => {
    const { code, stdout } = await runCommand(['assess', OLD, ...AT, ...ATTACHMENTS]);
    expect([code, stdout]).toEqual([0, expect.stringContaining('Nothing in this record blocks the release')]);
  });

  test('is shown where it is wrong, by the names that it has', async () => {
    const wrong = join(folder, 'wrong.json');
    const text = readFileSync(OLD, 'utf8').replace('"leastRadius": 640', '"leastRadius": -640');
    writeFileSync(wrong, text);
    const { code, stdout } = await runCommand(['assess', wrong, ...AT, '--json']);
    expect(code).toBe(2);
    const [finding] = jsonOf(stdout).findings;
    expect(finding.pointer).toBe('/antennas/items/0/groundPlane/leastRadius');
    expect(text.split('\n')[finding.line - 1]).toContain('"leastRadius": -640');
  });

  test('is posted as it is, and again without a change', async () => {
    for (let times = 0; times < 2; times++)
      expect(
        (await runCommand(['post', OLD, '--origin', service.origin, ...ATTACHMENTS], { key })).stderr,
      ).not.toContain('Cannot');
    const kept = await client.getVisit({ registration: 'Q-SLM', visit: 'nose-wheel-full' });
    expect(kept.body).toEqual(jsonOf(readFileSync(OLD, 'utf8')));
    expect((await client.listVisits({ registration: 'Q-SLM' })).body.items).toMatchObject([{ version: 1 }]);
  });

  test('gives tables, and takes them: then it is of the present version', async () => {
    const table = join(folder, 'equipment.csv');
    const out = join(folder, 'present.json');
    expect((await runCommand(['csv', 'from-record', 'equipment', OLD, '--out', table])).code).toBe(0);
    expect((await runCommand(['csv', 'to-record', 'equipment', table, '--into', OLD, '--out', out])).code).toBe(0);
    const present = upgrade(jsonOf(readFileSync(OLD, 'utf8')));
    expect(canonicalJson(jsonOf(readFileSync(out, 'utf8')))).toBe(canonicalJson(present));
  });

  test('is printed, with the record as it is', async () => {
    const out = join(folder, 'draft');
    expect((await runCommand(['pack', OLD, ...AT, ...ATTACHMENTS, '--out', out])).code).toBe(0);
    expect(readFileSync(join(out, 'Q-SLM-not-released.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    expect(readFileSync(join(out, 'Q-SLM-record.json'), 'utf8')).toBe(canonicalJson(jsonOf(readFileSync(OLD, 'utf8'))));
  });
});
