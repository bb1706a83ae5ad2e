import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundle } from '../../../worker/local/service/bundle.ts';
import { pdfOf, putDemo } from '../../../worker/local/service/demo.ts';
import { type Embedded, startEmbedded } from '../../../worker/local/service/embedded.ts';
import { freePort } from '../../../worker/local/service/free-port.ts';
import { ROOT } from '../../../worker/local/service/places.ts';

const folder = mkdtempSync(join(tmpdir(), 'slipmark-'));
const pack = join(folder, 'pack.pdf');
const published = join(folder, 'keys.json');
let service: Embedded;
let key = '';

beforeAll(async () => {
  const secrets = { adminSecret: 'secret-of-the-commands', sealSecret: 'seal-secret-of-the-commands' };
  const storage = join(folder, 'storage');
  service = await startEmbedded({ script: await bundle(), storage, port: await freePort(19_020), ...secrets });
  const demo = await putDemo(service.origin, secrets, () => undefined);
  key = demo.key ?? '';
  writeFileSync(pack, await pdfOf(service.origin, demo));
  writeFileSync(published, await (await fetch(`${service.origin}/v1/workshops/demo/keys.json`)).text());
}, 90_000);

afterAll(async () => {
  await service?.stop();
  rmSync(folder, { recursive: true, force: true });
});

interface Outcome {
  code: number;
  out: string;
}

/** Runs a command of the repository as npm would. */
function run(name: string, ...args: string[]): Promise<Outcome> {
  const file = join(ROOT, 'worker/local/slipmark.js');
  return new Promise((resolve) => {
    execFile(
      process.execPath,
      [file, name, ...args],
      { env: { ...process.env, SLIPMARK_KEY: key } },
      (error, stdout, stderr) =>
        resolve({ code: typeof error?.code === 'number' ? error.code : 0, out: stdout + stderr }),
    );
  });
}

describe('npm run verify', () => {
  test('proves a pack with nothing but the published keys', async () => {
    const { code, out } = await run('verify', pack, '--keys', published);
    expect(out).toContain('GENUINE: Q-SLM-P1-1, sealed by demo');
    expect(code).toBe(0);
  });

  test('says where a pack was altered, and what proves nothing', async () => {
    const bytes = new Uint8Array(readFileSync(pack));
    const at = new TextDecoder('latin1').decode(bytes).indexOf('<dc:format>') + 15;
    bytes[at] = (bytes[at] ?? 0) ^ 1;
    const forged = join(folder, 'forged.pdf');
    writeFileSync(forged, bytes);
    expect(await run('verify', forged, '--keys', published)).toMatchObject({ code: 1 });
    writeFileSync(forged, '%PDF-1.7 nothing');
    expect(await run('verify', forged, '--keys', published)).toMatchObject({ code: 2 });
    expect(await run('verify', forged)).toMatchObject({ code: 3 });
    writeFileSync(
      forged,
      Buffer.concat([readFileSync(pack), Buffer.from('stream\nslipmark-seal/1          \n%%EOF\n')]),
    );
    const behind = await run('verify', forged, '--keys', published);
    expect(behind).toMatchObject({ code: 1, out: expect.stringContaining('ALTERED: Q-SLM-P1-1') });
    const noKeys = join(folder, 'no-keys.json');
    for (const text of ['{}', 'null', '[]', '{"keys":{}}']) {
      writeFileSync(noKeys, text);
      expect((await run('verify', pack, '--keys', noKeys)).code, text).toBe(3);
    }
  });
});

describe('npm run keys', () => {
  const keys = (...args: string[]): Promise<Outcome> => run('keys', ...args, '--origin', service.origin);

  test('makes, lists, rotates and revokes a key', async () => {
    const made = await keys(
      'make',
      '--label',
      'inspector',
      '--scopes',
      'records,release',
      '--person',
      'jonas',
      '--json',
    );
    const { key: name, secret } = JSON.parse(made.out) as { key: string; secret: string };
    expect(secret).toMatch(/^slip_demo_/);
    expect((await keys('list')).out).toContain(`${name}  inspector  records,release  held by jonas`);
    const rotated = await keys('rotate', name);
    expect(rotated.out).toContain('Key (shown once): slip_demo_');
    const fresh = rotated.out.split(' ')[0] ?? '';
    expect((await keys('revoke', fresh)).code).toBe(0);
    expect((await keys('list')).out.match(/inspector .* revoked/g)).toHaveLength(2);
  });

  test('takes a new key to seal with, and refuses what it does not understand', async () => {
    expect((await keys('rotate-seal')).out).toContain('1 older keys stay published');
    expect((await keys('remake')).code).toBe(2);
    expect((await keys('list', '--key', 'nonsense')).code).toBe(1);
  });
});
