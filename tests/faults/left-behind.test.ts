import { afterAll, expect, test } from 'vitest';
import { bundle } from '../../worker/local/service/bundle.ts';
import { holdersOf } from '../../worker/local/service/holders.ts';
import { clientOf, newWorkshop } from './client.ts';
import { type KillableService, SECRETS, startKillable, temporaryStorage } from './killable-service.ts';
import { smallRecord } from './small-visit.ts';

const { storage, remove } = temporaryStorage();
const running: KillableService[] = [];

afterAll(async () => {
  for (const service of running) await service.kill().catch(() => undefined);
  remove();
});

async function start(script: string): Promise<KillableService> {
  const service = await startKillable(script, storage);
  running.push(service);
  return service;
}

test('a runtime that outlived its service is ended before the next one opens the storage', async () => {
  const script = await bundle();
  const first = await start(script);
  const { key } = await newWorkshop(first.origin, SECRETS.admin, 'left-behind');
  const path = '/v1/aircraft/Q-LFT/visits/v1';
  const body = smallRecord('Q-LFT', 'Kept by the first');
  expect((await clientOf(first.origin, key)(path, { method: 'PUT', body })).status).toBe(201);
  const left = await first.orphan();
  expect(left).toHaveLength(1);
  expect(holdersOf(storage)).toEqual(left);
  // It still listens, over the storage.
  await expect(clientOf(first.origin, key)(path)).resolves.toBeDefined();

  const second = await start(script);
  expect(holdersOf(storage)).not.toContain(left[0]);
  await expect(clientOf(first.origin, key)(path)).rejects.toThrow('fetch failed');
  const kept = await clientOf(second.origin, key)(path);
  expect(new TextDecoder().decode(kept.bytes)).toContain('Kept by the first');
});
