import { describe, expect, test } from 'vitest';
import { keep, RECORD, release, type TestService, testService } from '../service.ts';

const published = async (service: TestService): Promise<{ kid: string }[]> => {
  const response = await service.call(`/v1/workshops/${service.workshop}/keys.json`, { key: '' });
  return (await response.json<{ keys: { kid: string }[] }>()).keys;
};

describe('the keys that a workshop seals with', () => {
  test('are published without their private half, from the first release on', async () => {
    const service = await testService();
    expect(await published(service)).toEqual([]);
    await keep(service);
    await release(service);
    const [key] = await published(service);
    expect(key).toMatchObject({ kty: 'OKP', crv: 'Ed25519', alg: 'EdDSA', use: 'sig' });
    expect(key).not.toHaveProperty('d');
    expect(key).not.toHaveProperty('wrapped');
  });

  test('are one and the same for releases until it is replaced, and stay published after', async () => {
    const service = await testService();
    await keep(service);
    await release(service);
    await keep(service, { ...RECORD, note: 'second' });
    await release(service);
    const [first, ...others] = await published(service);
    expect(others).toEqual([]);
    expect((await service.call('/v1/seal-keys', { method: 'POST' })).status).toBe(201);
    const [second, retired] = await published(service);
    expect(retired).toEqual(first);
    expect(second?.kid).not.toBe(first?.kid);
  });

  test('made at once by two releases are one', async () => {
    const service = await testService();
    const paths = ['/v1/aircraft/Q-TST/visits/a', '/v1/aircraft/Q-TST/visits/b'];
    for (const path of paths) await keep(service, RECORD, path);
    await Promise.all(paths.map((path) => release(service, {}, path)));
    expect(await published(service)).toHaveLength(1);
  });

  test('of a workshop that does not exist are not found, and none are made of it', async () => {
    const { call } = await testService();
    expect((await call('/v1/workshops/nobody-here/keys.json', { key: '' })).status).toBe(404);
  });

  test('cannot be made without the secret of the deployment: nothing is released', async () => {
    const service = await testService({ world: { sealSecret: undefined } });
    await keep(service);
    const refused = await release(service);
    expect(refused.status).toBe(503);
    const aircraft = await (await service.call('/v1/aircraft/Q-TST')).json<{ packs: number }>();
    expect(aircraft.packs).toBe(0);
  });

  test('kept under another secret open nothing: the answer says what to do, and a new key helps', async () => {
    const before = await testService();
    await keep(before);
    await release(before);
    const service = await testService({ of: before, world: { sealSecret: 'another secret' } });
    await keep(service, { ...RECORD, note: 'second' });
    const refused = await release(service);
    expect(refused.status).toBe(503);
    expect((await refused.json<{ detail: string }>()).detail).toContain('POST /v1/seal-keys');
    expect((await service.call('/v1/seal-keys', { method: 'POST' })).status).toBe(201);
    expect((await release(service)).status).toBe(201);
    expect(await published(service)).toHaveLength(2);
  });
});
