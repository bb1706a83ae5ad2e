import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundle } from '../../worker/local/service/bundle.ts';
import { type Answer, type Client, clientOf, itemsOf, jsonOf, newWorkshop, tagOf } from './client.ts';
import { type KillableService, SECRETS, startKillable, temporaryStorage } from './killable-service.ts';
import { RELEASED_BY, smallRecord } from './small-visit.ts';
import { keysOf, type PackAnswer, Witness } from './witness.ts';

const RELEASES = 500;
const WORKSHOP = 'at-once';
const { storage, remove } = temporaryStorage();

let service: KillableService;
let client: Client;

beforeAll(async () => {
  service = await startKillable(await bundle(), storage);
  const { key } = await newWorkshop(service.origin, SECRETS.admin, WORKSHOP);
  client = clientOf(service.origin, key);
});

afterAll(async () => {
  await service?.kill();
  remove();
});

/** Keeps a visit and asks for its release as often as told, all at once. */
async function releasedAtOnce(registration: string, headersOf: (index: number) => Record<string, string>) {
  const path = `/v1/aircraft/${registration}/visits/v1`;
  const kept = await client(path, { method: 'PUT', body: smallRecord(registration, 'At once') });
  expect(kept.status).toBe(201);
  const read = { 'If-Match': tagOf(await client(`${path}/assessment`)) };
  const body = { by: RELEASED_BY, knowsOfNoHazard: true };
  const ask = (_: unknown, index: number): Promise<Answer> =>
    client(`${path}/release`, { method: 'POST', body, headers: { ...read, ...headersOf(index) } });
  return Promise.all(Array.from({ length: RELEASES }, ask));
}

/** One pack in the archive, whole, and no answer that names another. */
async function expectOnePack(registration: string, answers: readonly Answer[]): Promise<PackAnswer> {
  const packs = await itemsOf<PackAnswer>(client, `/v1/aircraft/${registration}/packs`);
  expect(packs.map(({ pack }) => pack)).toEqual([`${registration}-P1-1`]);
  const named = answers.filter(({ status }) => status < 300).map((answer) => jsonOf<PackAnswer>(answer));
  expect(named).toEqual(named.map(() => packs[0]));
  const witness = new Witness(registration);
  const recordSha256 = packs[0]?.recordSha256 ?? '';
  witness.attempt('visit-kept', 'v1', recordSha256);
  witness.attempt('pack-sealed', 'v1', recordSha256);
  await witness.verify(client, await keysOf(client, WORKSHOP));
  return packs[0] as PackAnswer;
}

describe(`${RELEASES} releases of one visit at once`, () => {
  test('make one pack, and every answer names it', async () => {
    const answers = await releasedAtOnce('Q-ONE', () => ({}));
    const statuses = answers.map(({ status }) => status);
    expect(statuses.filter((status) => status === 201)).toHaveLength(1);
    expect(new Set(statuses)).toEqual(new Set([200, 201]));
    await expectOnePack('Q-ONE', answers);
  });

  test('under one Idempotency-Key make one pack, and are answered alike', async () => {
    const answers = await releasedAtOnce('Q-TWO', () => ({ 'Idempotency-Key': 'the same' }));
    await expectOnePack('Q-TWO', answers);
    expect(new Set(answers.map(({ status }) => status).filter((status) => status >= 300))).toEqual(new Set());
  });
});
