import { runDurableObjectAlarm, runInDurableObject } from 'cloudflare:test';
import { env } from 'cloudflare:workers';
import { describe, expect, test } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { CloudArchive } from '../../../worker/edge/archive/cloud-archive.ts';
import { drain, enqueue, isEmpty } from '../../../worker/edge/archive/ledger/outbox.ts';
import { keep, RECORD, release, type TestService, testService } from '../service.ts';
import { faultyIndex } from './faulty-bindings.ts';

const ledgerOf = ({ workshop }: TestService) => env.LEDGER.get(env.LEDGER.idFromName(`${workshop}/Q-TST`));

async function listed(service: TestService): Promise<string[]> {
  const answer = await service.call('/v1/packs');
  const { items } = await answer.json<{ items: { pack: string }[] }>();
  return items.map(({ pack }) => pack);
}

describe('while the index fails', () => {
  test('lists of all packs answer 503 with Retry-After; everything else goes on', async () => {
    let isFailing = true;
    const archive = new CloudArchive({ ...env, INDEX: faultyIndex(() => isFailing) });
    const service = await testService({ world: { archive } });
    await keep(service);
    expect((await release(service)).status).toBe(201);
    const response = await service.call('/v1/packs');
    expect(response.status).toBe(503);
    expect(response.headers.get('Retry-After')).toMatch(/^\d+$/);
    expect(await response.text()).not.toContain('index unreachable');
    isFailing = false;
    expect((await service.call('/v1/packs')).status).toBe(200);
  });

  test('the ledger tries again by itself until the index knows the pack', async () => {
    const service = await testService();
    const ledger = ledgerOf(service);
    let isFailing = true;
    await runInDurableObject(ledger, (instance) => {
      Object.defineProperty(instance, 'env', { value: { ...env, INDEX: faultyIndex(() => isFailing) } });
    });
    await keep(service);
    expect((await release(service)).status).toBe(201);
    for (let attempt = 0; attempt < 3; attempt++) await runDurableObjectAlarm(ledger);
    expect(await listed(service)).toEqual([]);
    const due = await runInDurableObject(ledger, (_instance, { storage }) => storage.getAlarm());
    expect(due).not.toBeNull();
    isFailing = false;
    await runDurableObjectAlarm(ledger);
    expect(await listed(service)).toEqual(['Q-TST-P1-1']);
    await runInDurableObject(ledger, (_instance, { storage }) => expect(isEmpty(storage.sql)).toBe(true));
  });

  test('a ledger that wakes with untold packs and no alarm tells them', async () => {
    const service = await testService();
    await keep(service);
    await release(service);
    const ledger = ledgerOf(service);
    await runInDurableObject(ledger, async (_instance, { storage }) => {
      await storage.deleteAlarm();
      enqueue(storage.sql, service.workshop, 'Q-TST-P1-1');
    });
    const { Ledger } = await import('../../../worker/edge/archive/ledger/ledger.ts');
    await runInDurableObject(ledger, async (_instance, state) => {
      new Ledger(state, env);
      await expect.poll(() => isEmpty(state.storage.sql)).toBe(true);
    });
  });

  test('ways from files and links to their pack that were lost are made anew', async () => {
    const service = await testService();
    await keep(service);
    await release(service);
    const made = await service.call('/v1/packs/Q-TST-P1-1/links', { method: 'POST', body: { audience: 'owner' } });
    const { pathname } = new URL((await made.json<{ url: string }>()).url);
    const { pdfSha256 } = await (await service.call('/v1/packs/Q-TST-P1-1')).json<{ pdfSha256: string }>();
    const verdict = async (): Promise<string> =>
      (
        await (
          await service.call('/v1/verifications', { method: 'POST', body: { pdfSha256 } })
        ).json<{ verdict: string }>()
      ).verdict;
    const isOpen = async (): Promise<boolean> => (await service.call(pathname, { key: '' })).ok;
    expect([await verdict(), await isOpen()]).toEqual(['genuine', true]);
    const tokenSha256 = await sha256(pathname.replace('/p/', ''));
    await env.BLOBS.delete([`files/${pdfSha256}`, `links/${tokenSha256}`]);
    expect([await verdict(), await isOpen()]).toEqual(['unknown', false]);
    await service.call('/v1/aircraft/Q-TST/relisting', { method: 'POST' });
    expect([await verdict(), await isOpen()]).toEqual(['genuine', true]);
  });

  test.each([
    ['broken', (text: string) => text.slice(0, -1)],
    ['to another aircraft', (text: string) => text.replace('Q-TST', 'Q-TSU')],
    ['without a workshop', () => '{}'],
    ['to nothing', () => 'null'],
  ])('ways that are damaged never answer 503, and are counted when they are made anew: %s', async (_, spoil) => {
    const service = await testService();
    await keep(service);
    await release(service);
    const made = await service.call('/v1/packs/Q-TST-P1-1/links', { method: 'POST', body: { audience: 'owner' } });
    const { pathname } = new URL((await made.json<{ url: string }>()).url);
    const { pdfSha256 } = await (await service.call('/v1/packs/Q-TST-P1-1')).json<{ pdfSha256: string }>();
    for (const key of [`files/${pdfSha256}`, `links/${await sha256(pathname.replace('/p/', ''))}`])
      await env.BLOBS.put(key, spoil((await (await env.BLOBS.get(key))?.text()) ?? ''));
    const verify = () => service.call('/v1/verifications', { method: 'POST', body: { pdfSha256 } });
    const statuses = [(await verify()).status, (await service.call(pathname, { key: '' })).status];
    expect(
      statuses.every((status) => [200, 404, 500].includes(status)),
      statuses.join(),
    ).toBe(true);
    const relist = () => service.call('/v1/aircraft/Q-TST/relisting', { method: 'POST' });
    expect(await (await relist()).json()).toMatchObject({ mended: 2 });
    expect(await (await verify()).json()).toMatchObject({ verdict: 'genuine' });
    expect((await service.call(pathname, { key: '' })).status).toBe(200);
    expect(await (await relist()).json()).toMatchObject({ mended: 0 });
  });

  test.each([
    ['broken', '{"pack":'],
    ['of another pack', '{"pack":"Q-OTH-P1-1"}'],
    ['empty', 'null'],
  ])('a row of the list that is %s is asked of its ledger, and all others are given', async (_, summary) => {
    const service = await testService();
    for (const name of ['a', 'b']) {
      await keep(service, { ...RECORD, note: name }, `/v1/aircraft/Q-TST/visits/${name}`);
      await release(service, {}, `/v1/aircraft/Q-TST/visits/${name}`);
    }
    await runDurableObjectAlarm(ledgerOf(service));
    const before = await (await service.call('/v1/packs')).json();
    const statement = `UPDATE packs SET summary = ? WHERE workshop = ? AND pack = 'Q-TST-P1-1'`;
    await env.INDEX.prepare(statement).bind(summary, service.workshop).run();
    const answer = await service.call('/v1/packs');
    expect(answer.status).toBe(200);
    expect(await answer.json()).toEqual(before);
  });

  test.each([
    ['broken', `summary = substr(summary, 1, 40)`, 500],
    ['of another pack', `summary = replace(summary, 'Q-TST-P1-1', 'Q-TST-P9-9')`, 500],
    ['other in a name', `summary = replace(summary, '"jonas"', '"tonas"')`, 200],
  ])('a row of a pack that is %s is made anew from what was sealed', async (_, change, status) => {
    const service = await testService();
    await keep(service);
    await release(service);
    await runDurableObjectAlarm(ledgerOf(service));
    const before = await (await service.call('/v1/packs/Q-TST-P1-1')).json();
    await runInDurableObject(ledgerOf(service), (_instance, { storage }) => {
      storage.sql.exec(`UPDATE packs SET ${change}`);
      enqueue(storage.sql, service.workshop, 'Q-TST-P1-1');
    });
    const answer = await service.call('/v1/packs/Q-TST-P1-1');
    expect(answer.status).toBe(status);
    if (status === 500)
      expect(await answer.json()).toMatchObject({
        type: '/problems/damaged',
        detail: expect.stringContaining('slipmark reindex'),
      });
    const relisted = await service.call('/v1/aircraft/Q-TST/relisting', { method: 'POST' });
    expect(await relisted.json()).toMatchObject({ mended: 1 });
    expect(await (await service.call('/v1/packs/Q-TST-P1-1')).json()).toEqual(before);
  });

  test('a pack whose row is damaged keeps no other from the list', async () => {
    const service = await testService();
    for (const name of ['a', 'b']) {
      await keep(service, { ...RECORD, note: name }, `/v1/aircraft/Q-TST/visits/${name}`);
      await release(service, {}, `/v1/aircraft/Q-TST/visits/${name}`);
    }
    await runInDurableObject(ledgerOf(service), async (_instance, { storage }) => {
      const { sql } = storage;
      sql.exec(`UPDATE packs SET summary = '{' WHERE pack = 'Q-TST-P1-1'`);
      for (const pack of ['Q-TST-P1-1', 'Q-TST-P2-1']) enqueue(sql, service.workshop, pack);
      expect(await drain(sql, env.INDEX)).toBe(1_000);
      expect(sql.exec('SELECT pack FROM outbox').toArray()).toEqual([{ pack: 'Q-TST-P1-1' }]);
    });
    expect(await listed(service)).toContain('Q-TST-P2-1');
  });

  test('a list that was lost follows from the ledger again, and nothing happens to the aircraft', async () => {
    const service = await testService();
    await keep(service);
    await release(service);
    await runDurableObjectAlarm(ledgerOf(service));
    await env.INDEX.prepare('DELETE FROM packs').run();
    expect(await listed(service)).toEqual([]);
    const chain = await (await service.call('/v1/aircraft/Q-TST/ledger')).text();
    const answer = await service.call('/v1/aircraft/Q-TST/relisting', { method: 'POST' });
    expect([answer.status, await answer.json()]).toEqual([202, { registration: 'Q-TST', packs: 1, mended: 0 }]);
    await runDurableObjectAlarm(ledgerOf(service));
    expect(await listed(service)).toEqual(['Q-TST-P1-1']);
    expect(await (await service.call('/v1/aircraft/Q-TST/ledger')).text()).toBe(chain);
    expect((await service.call('/v1/aircraft/Q-NONE/relisting', { method: 'POST' })).status).toBe(404);
  });
});

test('drain() keeps what was told anew while it waited for the index', async () => {
  const service = await testService();
  await keep(service);
  await release(service);
  await runInDurableObject(ledgerOf(service), async (_instance, { storage }) => {
    const { sql } = storage;
    const told = () => enqueue(sql, service.workshop, 'Q-TST-P1-1');
    told();
    const slow = { prepare: env.INDEX.prepare.bind(env.INDEX), batch: async () => told() } as unknown as D1Database;
    expect(await drain(sql, slow)).toBe(0);
    expect(isEmpty(sql)).toBe(false);
    expect(await drain(sql, env.INDEX)).toBeNull();
    expect(isEmpty(sql)).toBe(true);
  });
});
