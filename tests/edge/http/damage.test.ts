import { runInDurableObject } from 'cloudflare:test';
import { env } from 'cloudflare:workers';
import { describe, expect, test } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { CloudArchive } from '../../../worker/edge/archive/cloud-archive.ts';
import { faultyBindings } from '../faults/faulty-bindings.ts';
import { keep, RECORD, release, type TestService, testService, VISIT } from '../service.ts';

const AIRCRAFT = '/v1/aircraft/Q-TST';
const PACK = '/v1/packs/Q-TST-P1-1';
const FILES = ['pack.pdf', 'record.json', 'manifest.json', 'documents.json', 'facts.json'];

interface FileState {
  name: string;
  sha256: string;
  state: string;
}

async function releasedWithLink(): Promise<{ service: TestService; link: string }> {
  const service = await testService();
  await keep(service);
  await release(service);
  const made = await service.call(`${PACK}/links`, { method: 'POST', body: { audience: 'owner' } });
  return { service, link: new URL((await made.json<{ url: string }>()).url).pathname };
}

const filesOf = async ({ call }: TestService): Promise<FileState[]> =>
  (await (await call(`${PACK}/files`)).json<{ files: FileState[] }>()).files;

/** Changes one byte of a stored file, or takes it away. */
async function damage({ workshop }: TestService, digest: string, how: 'flip' | 'remove'): Promise<void> {
  const key = `sha256/${workshop}/${digest}`;
  const bytes = (await (await env.BLOBS.get(key))?.bytes()) ?? new Uint8Array();
  bytes[10] = (bytes[10] ?? 0) ^ 1;
  await (how === 'flip' ? env.BLOBS.put(key, bytes) : env.BLOBS.delete(key));
}

describe.each(['flip', 'remove'] as const)('a stored file after a %s', (how) => {
  test.each(FILES)('%s: is given to nobody, noted, named, and brought back', async (name) => {
    const { service, link } = await releasedWithLink();
    const { call, events } = service;
    const original = await (await call(`${PACK}/${name}`)).bytes();
    const digest = await sha256(original);
    expect(await (await call(`${PACK}/files`)).json()).toMatchObject({ isWhole: true });
    await damage(service, digest, how);

    for (const headers of [{}, { Range: 'bytes=0-4' }]) {
      const read = await call(`${PACK}/${name}`, { headers });
      expect(read.status).toBe(500);
      expect(await read.json()).toMatchObject({ type: '/problems/damaged' });
    }
    expect(events).toContainEqual({ code: 'FILE_DAMAGED', file: expect.stringContaining(digest) });
    const state = how === 'flip' ? 'damaged' : 'missing';
    expect((await filesOf(service)).filter((file) => file.state !== 'whole')).toEqual([
      { name, sha256: digest, state },
    ]);
    if (name === 'documents.json' || name === 'facts.json') {
      const page = await call(link, { key: '', headers: { Accept: 'text/html', 'Accept-Language': 'de' } });
      expect(page.status).toBe(500);
      const text = await page.text();
      expect(text).toContain('beschädigt');
      expect(text).not.toContain('Freigegeben');
    }

    const put = (body: Uint8Array) => call(`${PACK}/files/${digest}`, { method: 'PUT', body });
    expect((await put(new TextEncoder().encode('another'))).status).toBe(422);
    expect((await put(original)).status).toBe(200);
    expect(await (await call(`${PACK}/${name}`)).bytes()).toEqual(original);
    expect(await (await call(`${PACK}/files`)).json()).toMatchObject({ isWhole: true });
  });
});

test('nothing but what the pack names can be brought to it', async () => {
  const { service } = await releasedWithLink();
  const stranger = new TextEncoder().encode('something else');
  const path = `${PACK}/files/${await sha256(stranger)}`;
  expect((await service.call(path, { method: 'PUT', body: stranger })).status).toBe(404);
});

test('a file that was handed in and is damaged is taken anew when it is handed in again', async () => {
  const service = await testService();
  const bytes = new TextEncoder().encode('%PDF a paper');
  const digest = await sha256(bytes);
  const path = `/v1/attachments/${digest}`;
  expect((await service.call(path, { method: 'PUT', body: bytes })).status).toBe(201);
  const key = `attachments/${service.workshop}/${digest}`;
  const customMetadata = (await env.BLOBS.head(key))?.customMetadata ?? {};
  await env.BLOBS.put(key, new TextEncoder().encode('%PDF b paper'), { customMetadata });
  expect((await service.call(`${path}/file`)).status).toBe(500);
  expect((await service.call(path, { method: 'PUT', body: bytes })).status).toBe(201);
  expect(await (await service.call(`${path}/file`)).bytes()).toEqual(bytes);
  expect((await service.call(path, { method: 'PUT', body: bytes })).status).toBe(200);
});

/** Does something to the tables of the ledger of Q-TST, as a disk that forgets or somebody with access to it. */
async function spoil({ workshop }: TestService, statement: string): Promise<void> {
  const ledger = env.LEDGER.get(env.LEDGER.idFromName(`${workshop}/Q-TST`));
  await runInDurableObject(ledger, (_, { storage }) => void storage.sql.exec(statement));
}

describe('a record that is damaged in its row', () => {
  const spoilt = async () => {
    const service = await testService();
    await keep(service);
    await spoil(service, `UPDATE visits SET record = replace(record, 'first', 'forst')`);
    return service;
  };

  test('is given to nobody, not assessed, not released and not amended: 500 damaged, with what to do', async () => {
    const service = await spoilt();
    const { call } = service;
    const amended = { method: 'PATCH', headers: { 'If-Match': '*', 'Content-Type': 'application/merge-patch+json' } };
    const released = { method: 'POST', headers: { 'If-Match': '"00"' }, body: { by: 'jonas', knowsOfNoHazard: true } };
    for (const answer of [
      await call(VISIT),
      await call(`${VISIT}/assessment`),
      await call(VISIT, { ...amended, body: '{"note":"second"}' }),
      await call(`${VISIT}/release`, released),
    ]) {
      expect(answer.status).toBe(500);
      const { type, detail } = await answer.json<{ type: string; detail: string }>();
      expect(type).toBe('/problems/damaged');
      expect(detail).toContain('Send the same record again');
    }
    expect(service.events).toContainEqual({
      code: 'FILE_DAMAGED',
      file: expect.stringContaining('record of visit v1'),
    });
    expect((await (await call(`${AIRCRAFT}/packs`)).json<{ items: object[] }>()).items).toEqual([]);
  });

  test('is whole again once it is sent again as it was kept, and stops nothing else meanwhile', async () => {
    const service = await spoilt();
    const { call } = service;
    await keep(service, { ...RECORD, note: 'other' }, `${AIRCRAFT}/visits/v2`);
    expect((await release(service, {}, `${AIRCRAFT}/visits/v2`)).status).toBe(201);
    const { items } = await (await call(`${AIRCRAFT}/visits`)).json<{ items: { recordSha256: string }[] }>();
    const headers = { 'If-Match': `"${items[0]?.recordSha256}"` };
    const sent = await call(VISIT, { method: 'PUT', body: RECORD, headers });
    expect([sent.status, (await sent.json<{ version: number }>()).version]).toEqual([200, 1]);
    expect(await (await call(VISIT)).json()).toEqual(RECORD);
    expect((await release(service)).status).toBe(201);
  });
});

describe('a ledger that was lost', () => {
  test('is not taken for that of a new aircraft', async () => {
    const { service } = await releasedWithLink();
    const ledger = env.LEDGER.get(env.LEDGER.idFromName(`${service.workshop}/Q-TST`));
    await runInDurableObject(ledger, (_, { storage }) => {
      for (const table of ['visits', 'packs', 'links', 'chain']) storage.sql.exec(`DELETE FROM ${table}`);
    });
    for (const path of [AIRCRAFT, `${AIRCRAFT}/due`]) expect((await service.call(path)).status, path).toBe(500);
    const put = await service.call(VISIT, { method: 'PUT', body: RECORD, headers: { 'If-None-Match': '*' } });
    expect(await put.json()).toMatchObject({ type: '/problems/damaged' });
    expect(service.events).toContainEqual({ code: 'FILE_DAMAGED', file: 'ledger of Q-TST' });
  });

  test('is told from one of which nothing was kept after all', async () => {
    const service = await testService();
    const put = () => service.call(VISIT, { method: 'PUT', body: RECORD, headers: { 'If-Match': '"00"' } });
    expect((await put()).status).toBe(412);
    expect((await service.call(AIRCRAFT)).status).toBe(404);
    expect((await keep(service)).status).toBe(201);
  });
});

describe('asking', () => {
  test('after an aircraft that nobody knows leaves nothing behind', async () => {
    const service = await testService();
    for (const path of ['', '/visits', '/visits/v1', '/packs', '/ledger', '/due', '/visits/v1/assessment'])
      await service.call(`${AIRCRAFT}${path}`);
    await service.call(`${PACK}/pack.pdf`);
    await service.call(VISIT, { method: 'PUT', body: RECORD, headers: { 'If-Match': '"00"' } });
    const ledger = env.LEDGER.get(env.LEDGER.idFromName(`${service.workshop}/Q-TST`));
    await runInDurableObject(ledger, (_, { storage }) => {
      const tables = `SELECT name FROM sqlite_master WHERE name NOT LIKE '\\_cf%' ESCAPE '\\'`;
      expect(storage.sql.exec(tables).toArray()).toEqual([]);
    });
  });

  test('is answered also where nothing can be noted', async () => {
    const { bindings, fault } = faultyBindings();
    const service = await testService({ world: { archive: new CloudArchive(bindings) } });
    await keep(service);
    await release(service);
    const made = await service.call(`${PACK}/links`, { method: 'POST', body: { audience: 'owner' } });
    const link = new URL((await made.json<{ url: string }>()).url).pathname;
    fault.named = /note(Use|Opening)$/;
    service.clock.at += 3_600_000;
    expect((await service.call(link, { key: '' })).status).toBe(200);
    expect((await service.call(PACK)).status).toBe(200);
    for (const what of ['opening', 'use of a key'])
      expect(service.events).toContainEqual({ code: 'NOT_NOTED', what, cause: 'storage unreachable' });
  });
});
