import { runInDurableObject } from 'cloudflare:test';
import { env } from 'cloudflare:workers';
import { expect, test } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { keep, RECORD, release, type TestService, testService } from '../service.ts';

/** Does something to the tables of a workshop, as a disk that forgets. */
async function spoil({ workshop }: TestService, statement: string, ...values: string[]): Promise<void> {
  const object = env.WORKSHOP.get(env.WORKSHOP.idFromName(workshop));
  await runInDurableObject(object, (_, { storage }) => void storage.sql.exec(statement, ...values));
}

const damaged = (remedy: string) => ({ type: '/problems/damaged', detail: expect.stringContaining(remedy) });

const published = async ({ call, workshop }: TestService): Promise<Response> =>
  call(`/v1/workshops/${workshop}/keys.json`, { key: '' });

async function releasedOnce(): Promise<TestService> {
  const service = await testService();
  await keep(service);
  expect((await release(service)).status).toBe(201);
  await keep(service, { ...RECORD, note: 'second' });
  return service;
}

test.each([
  ['the published half', `publicJwk = replace(publicJwk, substr(publicJwk, instr(publicJwk, '"x":"') + 5, 4), 'AAAA')`],
  ['the published half, which is no JSON', `publicJwk = substr(publicJwk, 2)`],
  ['the name', `kid = 'A' || substr(kid, 2, 41) || 'A'`],
])('nothing is released by a seal key of which %s is damaged, until keys.json brings it back', async (_, change) => {
  const service = await releasedOnce();
  const before = await (await published(service)).json<object>();
  await spoil(service, `UPDATE sealKeys SET ${change}`);
  for (const answer of [await published(service), await release(service)]) {
    expect(answer.status).toBe(500);
    expect(await answer.json()).toMatchObject(damaged('POST /v1/seal-keys/retired'));
  }
  const brought = await service.call('/v1/seal-keys/retired', { method: 'POST', body: before });
  expect(brought.status, await brought.clone().text()).toBe(200);
  expect(await (await published(service)).json()).toEqual(before);
  expect((await release(service)).status).toBe(201);
});

test.each([
  ['in its last characters', `wrapped = substr(wrapped, 1, length(wrapped) - 6) || 'AAAAAA'`, 503],
  ['in its form', `wrapped = 'x' || wrapped`, 500],
  ['to nothing', `wrapped = 'none'`, 500],
])('a private half that is damaged %s is said to be, with what to do', async (_, change, status) => {
  const service = await releasedOnce();
  await spoil(service, `UPDATE sealKeys SET ${change}`);
  const answer = await release(service);
  expect(answer.status).toBe(status);
  const { detail } = await answer.json<{ detail: string }>();
  expect(detail).toMatch(/[Dd]amaged|stored of it/);
  expect(detail).toContain('POST /v1/seal-keys');
  expect((await service.call('/v1/seal-keys', { method: 'POST' })).status).toBe(201);
  expect((await release(service)).status).toBe(201);
});

const PERSON = { name: 'Jonas Veldt', capacity: 'Inspector', scope: ['airframe', 'release'] };

test.each([
  ['rights that are cut off', `scope = '["release"'`],
  ['rights of another form', `scope = '{"release":true}'`],
  ['a last day that is none', `validUntil = '2027-0x-01'`],
])('a row of the table of people with %s releases nobody, and is entered again', async (_, change) => {
  const service = await testService();
  const enter = () => service.call('/v1/people/jonas', { method: 'PUT', body: PERSON });
  expect((await enter()).status).toBe(201);
  await keep(service);
  await spoil(service, `UPDATE people SET ${change}`);
  for (const path of ['/v1/people', '/v1/aircraft/Q-TST/visits/v1/assessment'])
    expect(await (await service.call(path)).json(), path).toMatchObject(damaged('PUT /v1/people/jonas'));
  expect((await release(service)).status).toBe(500);
  expect((await enter()).status).toBe(200);
  expect((await release(service)).status).toBe(201);
});

test.each(['["links"', '{}', '["links","everything"]'])(
  'a key whose rights are damaged opens nothing, is listed without any and can be revoked: %s',
  async (scopes) => {
    const service = await testService();
    const made = await service.call('/v1/keys', { method: 'POST', body: { label: 'tool', scopes: ['records'] } });
    const { key, secret } = await made.json<{ key: string; secret: string }>();
    await spoil(service, 'UPDATE keys SET scopes = ? WHERE key = ?', scopes, key);
    const used = await service.call('/v1/aircraft', { key: secret });
    expect(await used.json()).toMatchObject(damaged(`slipmark keys revoke ${key}`));
    const { items } = await (await service.call('/v1/keys')).json<{ items: { key: string; scopes: string[] }[] }>();
    expect(items.find((listed) => listed.key === key)?.scopes).toEqual([]);
    expect((await service.call(`/v1/keys/${key}`, { method: 'DELETE' })).status).toBe(204);
    expect((await service.call('/v1/aircraft', { key: secret })).status).toBe(401);
  },
);

test.each(['{"ok":', 'null', '{}'])(
  'what is known of a file is damaged: it counts as not handed in, and is handed in again: %s',
  async (fact) => {
    const service = await testService();
    const bytes = new TextEncoder().encode('%PDF a paper');
    const digest = await sha256(bytes);
    const path = `/v1/attachments/${digest}`;
    const handIn = () => service.call(path, { method: 'PUT', body: bytes });
    expect((await handIn()).status).toBe(201);
    await env.BLOBS.put(`attachments/${service.workshop}/${digest}`, bytes, { customMetadata: { fact } });
    for (const each of [path, `${path}/file`])
      expect(await (await service.call(each)).json(), each).toMatchObject(damaged('Hand the file in again'));
    const record = { ...RECORD, attachments: [{ sha256: digest }] };
    expect((await keep(service, record)).status).toBe(201);
    expect((await handIn()).status).toBe(201);
    expect(await (await service.call(`${path}/file`)).bytes()).toEqual(bytes);
  },
);
