import { runInDurableObject } from 'cloudflare:test';
import { env } from 'cloudflare:workers';
import { describe, expect, test } from 'vitest';
import { createApp } from '../../../worker/edge/http/app.ts';
import { cloudWorld } from '../../../worker/edge/world.ts';
import { pipelineDouble } from '../pipeline-double.ts';
import { ADMIN_SECRET, keep, RECORD, testService, VISIT } from '../service.ts';

const post = (body: unknown, key?: string) => ({ method: 'POST', body, ...(key !== undefined && { key }) });

describe('keys', () => {
  test('are needed: none, a malformed, an unknown and another scheme answer 401', async () => {
    const { call, workshop } = await testService();
    for (const key of ['', 'nonsense', `slip_${workshop}_${'A'.repeat(43)}`, `slip_nobody_${'A'.repeat(43)}`]) {
      const response = await call(VISIT, { key });
      expect(response.status).toBe(401);
      expect(response.headers.get('WWW-Authenticate')).toContain('Bearer');
    }
    expect((await call(VISIT, { key: '', headers: { Authorization: 'Basic eDp5' } })).status).toBe(401);
  });

  test('name their workshop and carry 256 random bits', async () => {
    const { key, workshop } = await testService();
    expect(key).toMatch(new RegExp(`^slip_${workshop}_[A-Za-z0-9_-]{43}$`));
  });

  test('open only what their scopes allow', async () => {
    const service = await testService();
    await keep(service);
    const body = { label: 'scale head', scopes: ['records'] };
    const { secret } = await (await service.call('/v1/keys', post(body))).json<{ secret: string }>();
    expect((await service.call(VISIT, { key: secret })).status).toBe(200);
    const attestation = { by: 'jonas', knowsOfNoHazard: true };
    expect((await service.call(`${VISIT}/release`, post(attestation, secret))).status).toBe(403);
    expect((await service.call('/v1/packs/Q-TST-P1-1/links', post({ audience: 'owner' }, secret))).status).toBe(403);
    expect((await service.call('/v1/keys', { key: secret })).status).toBe(403);
  });

  test('open nothing once revoked, and cannot revoke themselves', async () => {
    const { call } = await testService();
    const body = { label: 'laptop', scopes: ['records', 'records'] };
    const made = await (await call('/v1/keys', post(body))).json<{ key: string; secret: string; scopes: string[] }>();
    expect(made.scopes).toEqual(['records']);
    expect((await call('/v1/packs', { key: made.secret })).status).toBe(200);
    expect((await call(`/v1/keys/${made.key}`, { method: 'DELETE' })).status).toBe(204);
    expect((await call('/v1/packs', { key: made.secret })).status).toBe(401);
    const list = await (await call('/v1/keys')).text();
    expect(list).not.toContain(made.secret);
    const { items } = JSON.parse(list) as { items: { key: string; label: string; revokedAt: string | null }[] };
    expect(items.find(({ key }) => key === made.key)?.revokedAt).toBe('2026-11-05T12:00:00.000Z');
    const own = items.find(({ label }) => label === 'first key')?.key;
    expect((await call(`/v1/keys/${own}`, { method: 'DELETE' })).status).toBe(409);
    expect((await call('/v1/keys/none', { method: 'DELETE' })).status).toBe(404);
  });

  test('have a share of requests a minute, told in every answer, and a new one in the next minute', async () => {
    const { call, clock } = await testService({ world: { requestsPerMinute: 2 } });
    clock.at = Math.ceil(clock.at / 60_000) * 60_000 + 45_000;
    const first = await call('/v1/packs');
    expect(first.headers.get('RateLimit-Policy')).toBe('"key";q=2;w=60');
    expect(first.headers.get('RateLimit')).toBe('"key";r=1;t=15');
    await call('/v1/packs');
    const refused = await call('/v1/packs');
    expect(refused.status).toBe(429);
    expect(refused.headers.get('Retry-After')).toBe('15');
    expect(await refused.json()).toMatchObject({ type: '/problems/too-many-requests' });
    clock.at += 15_000;
    expect((await call('/v1/packs')).status).toBe(200);
  });

  test('in a person’s hand release in that name alone', async () => {
    const service = await testService();
    await keep(service);
    const body = { label: 'inspector', scopes: ['records', 'release'], person: 'jonas' };
    const { secret } = await (await service.call('/v1/keys', post(body))).json<{ secret: string }>();
    const tag = (await service.call(`${VISIT}/assessment`)).headers.get('ETag') ?? '';
    const released = (by: string) =>
      service.call(`${VISIT}/release`, {
        ...post({ by, knowsOfNoHazard: true }, secret),
        headers: { 'If-Match': tag },
      });
    const unknown = await released('jonas');
    expect(unknown.status).toBe(403);
    expect((await unknown.json<{ detail: string }>()).detail).toContain('PUT /v1/people/jonas');
    const person = { name: 'Jonas Veldt', capacity: 'Inspector', licence: 'INSP-0417', scope: ['release'] };
    const enter = (more: object) => service.call('/v1/people/jonas', { method: 'PUT', body: { ...person, ...more } });
    expect((await enter({ until: '2026-11-04' })).status).toBe(201);
    expect((await released('jonas')).status).toBe(403);
    expect((await enter({})).status).toBe(200);
    expect((await released('mila')).status).toBe(403);
    expect((await released('jonas')).status).toBe(201);
  });

  test('tell when they were used last, to the hour', async () => {
    const { call, clock } = await testService();
    clock.at += 3_900_000;
    await call('/v1/packs');
    const { items } = await (await call('/v1/keys')).json<{ items: { lastUsedAt: string }[] }>();
    expect(items[0]?.lastUsedAt).toBe('2026-11-05T13:00:00Z');
  });

  test('get a new text by rotation, with the rights of the old one, which opens nothing', async () => {
    const { call } = await testService();
    const body = { label: 'inspector', scopes: ['records'], person: 'jonas' };
    const made = await (await call('/v1/keys', post(body))).json<{ key: string; secret: string }>();
    const rotated = await call(`/v1/keys/${made.key}/rotation`, { method: 'POST' });
    expect(rotated.status).toBe(201);
    const fresh = await rotated.json<{ secret: string; person: string; scopes: string[] }>();
    expect(fresh).toMatchObject({ person: 'jonas', scopes: ['records'] });
    expect((await call('/v1/packs', { key: made.secret })).status).toBe(401);
    expect((await call('/v1/packs', { key: fresh.secret })).status).toBe(200);
    expect((await call(`/v1/keys/${made.key}/rotation`, { method: 'POST' })).status).toBe(404);
  });

  test('of one workshop do not see what another keeps under the same registration', async () => {
    const [one, other] = [await testService(), await testService()];
    await keep(one);
    expect((await other.call(VISIT)).status).toBe(404);
    await keep(other, { ...RECORD, note: 'theirs' });
    expect(await (await one.call(VISIT)).json()).toEqual(RECORD);
  });

  test('are refused with every defect of the request', async () => {
    const { call } = await testService();
    const response = await call('/v1/keys', post({ label: '', scopes: ['everything'], more: 1 }));
    expect(response.status).toBe(422);
    const { findings } = await response.json<{ findings: { pointer: string }[] }>();
    expect(findings.map(({ pointer }) => pointer).sort()).toEqual(['/label', '/more', '/scopes/0']);
  });
});

test('asking for a workshop that was never created leaves nothing behind', async () => {
  const { call } = await testService();
  const key = `slip_never-created_${'A'.repeat(43)}`;
  expect((await call(VISIT, { key })).status).toBe(401);
  await runInDurableObject(env.WORKSHOP.get(env.WORKSHOP.idFromName('never-created')), (_workshop, { storage }) => {
    expect(
      storage.sql.exec(`SELECT name FROM sqlite_master WHERE name NOT LIKE '\\_cf%' ESCAPE '\\'`).toArray(),
    ).toEqual([]);
  });
});

describe('POST workshops', () => {
  test.each(['\u65e5\u672c\u5de5\u623f', '\u{1f6e9}', 'a\u001b[2Jb', 'line\nfeed'])(
    'refuses a name that no pack can print: %j',
    async (name) => {
      const { call } = await testService();
      const response = await call('/v1/workshops', {
        method: 'POST',
        key: ADMIN_SECRET,
        body: { id: 'unprintable', name },
      });
      expect(response.status).toBe(422);
      const { findings } = await response.json<{ findings: { pointer: string }[] }>();
      expect(findings.map(({ pointer }) => pointer)).toEqual(['/name']);
    },
  );

  test('needs the secret of the deployment', async () => {
    const { call, key } = await testService();
    const body = { id: 'another', name: 'Another' };
    for (const wrong of ['', 'guess', key, `${ADMIN_SECRET}x`])
      expect((await call('/v1/workshops', post(body, wrong))).status).toBe(401);
  });

  test('cannot be done at all where the deployment has no secret', async () => {
    const world = { ...cloudWorld(env), adminSecret: undefined };
    const app = createApp({ world, pipeline: pipelineDouble });
    const headers = { Authorization: 'Bearer undefined', 'Content-Type': 'application/json' };
    const body = JSON.stringify({ id: 'another', name: 'Another' });
    const response = await app.request('https://slipmark.example/v1/workshops', { method: 'POST', headers, body });
    expect(response.status).toBe(401);
  });

  test('answers 409 to a name that is taken, and leaves the keys of the first', async () => {
    const { call, workshop } = await testService();
    const body = { id: workshop, name: 'Again' };
    expect((await call('/v1/workshops', post(body, ADMIN_SECRET))).status).toBe(409);
    expect((await call('/v1/packs')).status).toBe(200);
    expect((await call('/v1/workshops', post({ id: 'Bad_Name', name: 'x' }, ADMIN_SECRET))).status).toBe(422);
  });
});
