import { mkdtempSync, rmSync, statSync, symlinkSync, unlinkSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundle } from '../../../worker/local/service/bundle.ts';
import { pdfOf, putDemo } from '../../../worker/local/service/demo.ts';
import { type Embedded, startEmbedded } from '../../../worker/local/service/embedded.ts';
import { freePort } from '../../../worker/local/service/free-port.ts';
import { takeLock } from '../../../worker/local/service/lock.ts';
import { type Memory, recall, remember } from '../../../worker/local/service/memory.ts';

const storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
const keep = (memory: Memory) => remember(storage, memory);
let script: string;
let service: Embedded | undefined;

async function start(): Promise<Embedded> {
  const { adminSecret, sealSecret } = recall(storage);
  service = await startEmbedded({ script, storage, port: await freePort(18_787), adminSecret, sealSecret });
  return service;
}

beforeAll(async () => {
  script = await bundle();
});

afterAll(async () => {
  await service?.stop();
  rmSync(storage, { recursive: true, force: true });
});

describe('embedded service', () => {
  test('keeps everything over a restart and does not put the demo in twice', { timeout: 60_000 }, async () => {
    const first = await start();
    const demo = await putDemo(first.origin, recall(storage), keep);
    const pdf = await pdfOf(first.origin, demo);
    expect(new TextDecoder().decode(pdf.slice(0, 5))).toBe('%PDF-');
    await first.stop();

    const second = await start();
    const again = await putDemo(second.origin, recall(storage), keep);
    expect(again).toEqual(demo);
    expect(await pdfOf(second.origin, again)).toEqual(pdf);
    const headers = { Authorization: `Bearer ${again.key}` };
    for (const path of ['/v1/packs', '/v1/aircraft/Q-SLM/packs']) {
      const { items } = (await (await fetch(second.origin + path, { headers })).json()) as { items: object[] };
      expect(items).toMatchObject([{ pack: 'Q-SLM-P1-1' }]);
    }
    expect((await fetch(second.origin + again.ownerPath)).status).toBe(200);
    expect((await fetch(`${second.origin}/assets/page.css`)).status).toBe(200);
  });

  test('goes on serving while its log cannot be written', async () => {
    await service?.stop();
    rmSync(join(storage, 'service.log'), { force: true });
    // Every write to it answers that no space is left.
    symlinkSync('/dev/full', join(storage, 'service.log'));
    const again = await start();
    const headers = { Authorization: `Bearer ${recall(storage).key}`, 'Content-Type': 'application/json' };
    const body = JSON.stringify({ label: 'is logged', scopes: ['admin'] });
    const made = await fetch(`${again.origin}/v1/keys`, { method: 'POST', headers, body });
    expect(made.status).toBe(201);
    expect((await fetch(`${again.origin}/readyz`)).status).toBe(200);
    await again.stop();
    service = undefined;
    unlinkSync(join(storage, 'service.log'));
  });

  test('remembers its secrets in a file that only its user can read', () => {
    remember(storage, recall(storage));
    expect(statSync(join(storage, 'memory.json')).mode & 0o777).toBe(0o600);
  });
});

describe('freePort()', () => {
  test('passes over a port that is taken', async () => {
    const port = await freePort(28_787);
    const holder = createServer();
    await new Promise<void>((resolve) => holder.listen(port, '127.0.0.1', resolve));
    expect(await freePort(port)).toBeGreaterThan(port);
    holder.close();
  });
});

describe('takeLock()', () => {
  test('is refused while it is held', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'slipmark-'));
    const lock = await takeLock(folder);
    expect(await takeLock(folder)).toBeUndefined();
    await lock?.release();
    expect(await takeLock(folder)).toBeDefined();
    rmSync(folder, { recursive: true });
  });
});
