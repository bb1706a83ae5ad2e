import { runDurableObjectAlarm, runInDurableObject } from 'cloudflare:test';
import { env } from 'cloudflare:workers';
import { beforeAll, describe, expect, test } from 'vitest';
import weighingOnly from '../../../fixtures/visits/weighing-only.json' with { type: 'json' };
import * as pipeline from '../../../worker/core/core.ts';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import type { ChainEntry, VisitState } from '../../../worker/edge/archive/ledger/ledger-calls.ts';
import { type TestService, testService } from '../service.ts';

const AIRCRAFT = '/v1/aircraft/Q-WGT';
const VISIT = `${AIRCRAFT}/visits/weighing`;
const FILES = ['pack.pdf', 'record.json', 'manifest.json', 'documents.json', 'facts.json'];

/** An aircraft whose ledger was lost is damaged: it is not taken for one that nobody knows. */
const LOST = 500;

type Pack = { pack: string; pdfSha256: string } & Record<string, unknown>;

/** A ledger as an export reads it, with the files of its packs. */
interface Exported {
  service: TestService;
  ledger: { entries: ChainEntry[]; visits: { visit: string; record: string }[]; packs: object[] };
  packs: Pack[];
  files: Uint8Array[];
}

const items = async <Item>(service: TestService, path: string): Promise<Item[]> =>
  (await (await service.call(path)).json<{ items: Item[] }>()).items;

async function releaseNext(service: TestService, days: number): Promise<Response> {
  const condition = { 'If-Match': (await service.call(VISIT)).headers.get('ETag') ?? '' };
  const workEndedAt = `2026-11-0${days}T12:00:00+01:00`;
  const release = { ...weighingOnly.release, reasonForIssue: `Work ended on day ${days}` };
  const record = { ...weighingOnly, visit: { ...weighingOnly.visit, workEndedAt }, release };
  await service.call(VISIT, { method: 'PUT', body: record, headers: condition['If-Match'] ? condition : {} });
  const headers = { 'If-Match': (await service.call(`${VISIT}/assessment`)).headers.get('ETag') ?? '' };
  const body = { by: weighingOnly.release.by, knowsOfNoHazard: true };
  return service.call(`${VISIT}/release`, { method: 'POST', body, headers });
}

/** Two issues of a pack, the second withdrawn, a link, and a visit that is still open. */
async function workshopWithPast(): Promise<TestService> {
  const service = await testService({ pipeline });
  service.clock.at = Date.parse('2026-11-10T12:00:00Z');
  for (const days of [5, 6]) expect((await releaseNext(service, days)).status).toBe(201);
  await service.call('/v1/packs/Q-WGT-P1-1/links', { method: 'POST', body: { audience: 'owner' } });
  const body = { by: 'Rufus', reason: 'the wrong scale' };
  await service.call('/v1/packs/Q-WGT-P1-2/withdrawal', { method: 'POST', body });
  await service.call(`${AIRCRAFT}/visits/open`, { method: 'PUT', body: weighingOnly });
  return service;
}

async function exported(service: TestService): Promise<Exported> {
  const packs = (await items<Pack>(service, `${AIRCRAFT}/packs`)).reverse();
  const names = (await items<VisitState>(service, `${AIRCRAFT}/visits`)).map(({ visit }) => visit);
  const record = async (visit: string) => (await service.call(`${AIRCRAFT}/visits/${visit}`)).text();
  const visits = await Promise.all(names.map(async (visit) => ({ visit, record: await record(visit) })));
  const paths = packs.flatMap(({ pack }) => FILES.map((file) => `/v1/packs/${pack}/${file}`));
  const files = await Promise.all(paths.map(async (path) => (await service.call(path)).bytes()));
  const summaries = packs.map(({ previous: _, supersededBy: _s, withdrawal: _w, files: _f, ...rest }) => {
    const { manifestSha256: _m, pdfSha256: _p, recordSha256: _r, ...summary } = rest as Record<string, unknown>;
    return summary;
  });
  const entries = await items<ChainEntry>(service, `${AIRCRAFT}/ledger`);
  return { service, ledger: { entries, visits, packs: summaries }, packs, files };
}

const ledgerObject = ({ workshop }: TestService) => env.LEDGER.get(env.LEDGER.idFromName(`${workshop}/Q-WGT`));

/** As if the storage of the ledger had been lost. */
async function lose(service: TestService): Promise<void> {
  await runInDurableObject(ledgerObject(service), (_, { storage }) => {
    for (const table of ['visits', 'packs', 'links', 'chain', 'outbox']) storage.sql.exec(`DELETE FROM ${table}`);
  });
}

async function bring({ call }: TestService, files: readonly Uint8Array[], key?: string): Promise<Response[]> {
  const put = async (body: Uint8Array) =>
    call(`${AIRCRAFT}/restoration/blobs/${await sha256(body)}`, { method: 'PUT', body, ...(key && { key }) });
  return Promise.all(files.map(put));
}

const restore = ({ call }: TestService, body: object): Promise<Response> =>
  call(`${AIRCRAFT}/restoration`, { method: 'PUT', body });

const codes = async (response: Response): Promise<string[]> =>
  (await response.json<{ findings: { code: string }[] }>()).findings.map(({ code }) => code);

const publicKeys = async ({ call, workshop }: TestService) =>
  (await call(`/v1/workshops/${workshop}/keys.json`, { key: '' })).json<{ keys: { kid: string }[] }>();

describe('PUT /v1/aircraft/{registration}/restoration', () => {
  test('brings back visits, packs, withdrawals and chain as they were, and a release continues them', async () => {
    const service = await workshopWithPast();
    const before = await exported(service);
    await lose(service);
    expect((await service.call(AIRCRAFT)).status).toBe(LOST);
    for (const response of await bring(service, before.files)) expect(response.status).toBe(200);
    const restored = await restore(service, before.ledger);
    expect(restored.status, await restored.clone().text()).toBe(201);
    expect(await restored.json()).toMatchObject({ seq: before.ledger.entries.length, visits: 2, packs: 2 });

    const after = await exported(service);
    expect({ ...after, service }).toEqual({ ...before, service });
    const [first] = before.packs;
    const body = { pdfSha256: first?.pdfSha256 };
    const verdict = await service.call('/v1/verifications', { method: 'POST', body, key: '' });
    expect(await verdict.json()).toMatchObject({
      verdict: 'superseded',
      pack: 'Q-WGT-P1-1',
      workshop: service.workshop,
    });
    await runDurableObjectAlarm(ledgerObject(service));
    const listed = await items<{ pack: string; withdrawnAt: string | null }>(service, '/v1/packs');
    expect(listed.map(({ pack, withdrawnAt }) => [pack, withdrawnAt !== null])).toEqual([
      ['Q-WGT-P1-2', true],
      ['Q-WGT-P1-1', false],
    ]);

    expect((await restore(service, before.ledger)).status).toBe(200);
    const next = await releaseNext(service, 7);
    expect(await next.json()).toMatchObject({ pack: 'Q-WGT-P1-3', previous: 'Q-WGT-P1-2' });
    const chain = (await exported(service)).ledger.entries;
    expect(chain[before.ledger.entries.length]?.previous).toBe(before.ledger.entries.at(-1)?.digest);
    expect((await restore(service, before.ledger)).status).toBe(409);
  });

  describe('refuses, and writes nothing,', () => {
    let past: Exported;
    let service: TestService;

    beforeAll(async () => {
      service = await workshopWithPast();
      past = await exported(service);
      await lose(service);
      await bring(service, past.files);
    });

    const refused = async (change: (ledger: Exported['ledger']) => void): Promise<string[]> => {
      const ledger = structuredClone(past.ledger);
      change(ledger);
      const response = await restore(service, ledger);
      expect(response.status).toBe(422);
      expect((await service.call(AIRCRAFT)).status).toBe(LOST);
      return codes(response);
    };

    test('a chain with an entry altered, left out or put elsewhere', async () => {
      for (const change of [
        ({ entries }: Exported['ledger']) => Object.assign(entries[1] ?? {}, { at: '2026-11-10T12:00:01.000Z' }),
        ({ entries }: Exported['ledger']) => entries.splice(1, 1),
        ({ entries }: Exported['ledger']) => entries.reverse(),
      ])
        expect(await refused(change)).toEqual(['CHAIN_BROKEN']);
    });

    test('a record that is not the one that was kept, none, and one too many', async () => {
      const [record] = past.ledger.visits;
      const altered = record?.record.replace('Q-WGT', 'Q-WGU') ?? '';
      expect(altered).not.toBe(record?.record);
      expect(await refused(({ visits }) => Object.assign(visits[0] ?? {}, { record: altered }))).toEqual([
        'RECORD_DIFFERS',
      ]);
      expect(await refused(({ visits }) => visits.pop())).toEqual(['VISIT_MISSING']);
      expect(await refused(({ visits }) => visits.push({ visit: 'other', record: '{}' }))).toEqual(['VISIT_UNKNOWN']);
    });

    test('a summary that the chain contradicts, none, and one too many', async () => {
      expect(await refused(({ packs }) => Object.assign(packs[0] ?? {}, { issue: 2 }))).toEqual(['SUMMARY_DIFFERS']);
      expect(await refused(({ packs }) => packs.pop())).toEqual(['PACK_MISSING']);
      expect(await refused(({ packs }) => packs.push(packs[0] ?? {}))).toEqual(['PACK_UNKNOWN']);
    });

    test('the ledger of another aircraft, and bytes of another digest', async () => {
      const other = '/v1/aircraft/Q-WGX/restoration';
      const response = await service.call(other, { method: 'PUT', body: past.ledger });
      expect(response.status).toBe(422);
      const name = await sha256(past.files[0] ?? '');
      const mismatch = { method: 'PUT', body: past.files[1] };
      const blob = await service.call(`${AIRCRAFT}/restoration/blobs/${name}`, mismatch);
      expect(await blob.json()).toMatchObject({ type: '/problems/digest-differs' });
    });

    test('whoever has no administrator’s key', async () => {
      const body = { label: 'tool', scopes: ['records', 'release', 'links'] };
      const made = await service.call('/v1/keys', { method: 'POST', body });
      const { secret } = await made.json<{ secret: string }>();
      for (const response of await bring(service, past.files, secret)) expect(response.status).toBe(403);
      for (const [method, path] of [
        ['PUT', `${AIRCRAFT}/restoration`],
        ['POST', '/v1/seal-keys/retired'],
      ] as const)
        expect((await service.call(path, { method, body: past.ledger, key: secret })).status).toBe(403);
    });
  });

  test('gives nobody the pack of another workshop, with the digests alone or with the files', async () => {
    const owner = await exported(await workshopWithPast());
    const stranger = await testService({ pipeline });
    const missing = await codes(await restore(stranger, owner.ledger));
    expect([...new Set(missing)]).toEqual(['BLOB_MISSING']);
    await bring(stranger, owner.files);
    expect([...new Set(await codes(await restore(stranger, owner.ledger)))]).toEqual(['SEAL_UNPROVED']);
    const keys = await publicKeys(owner.service);
    const taken = await stranger.call('/v1/seal-keys/retired', { method: 'POST', body: keys });
    expect(taken.status).toBe(200);
    await bring(stranger, owner.files);
    expect([...new Set(await codes(await restore(stranger, owner.ledger)))]).toEqual(['SEAL_OF_ANOTHER']);
    expect((await stranger.call('/v1/packs/Q-WGT-P1-1')).status).toBe(404);
  });
});

describe('POST /v1/seal-keys/retired', () => {
  test('publishes the keys of an earlier deployment; the first release takes a key of its own', async () => {
    const [old, fresh] = [await workshopWithPast(), await testService({ pipeline })];
    const keys = await publicKeys(old);
    const takeOver = (body: object) => fresh.call('/v1/seal-keys/retired', { method: 'POST', body });
    for (let turn = 0; turn < 2; turn++) expect(await (await takeOver(keys)).json()).toEqual(keys);
    expect(await publicKeys(fresh)).toEqual(keys);
    fresh.clock.at = old.clock.at;
    expect((await releaseNext(fresh, 5)).status).toBe(201);
    const published = (await publicKeys(fresh)).keys;
    expect(published).toHaveLength(2);
    expect(published[1]).toEqual(keys.keys[0]);
    expect((await takeOver(await publicKeys(old))).status).toBe(200);
    expect((await takeOver(await publicKeys(await workshopWithPast()))).status).toBe(409);
  });

  test('refuses a private half, and a key under a name that is not its own', async () => {
    const [old, fresh] = [await workshopWithPast(), await testService()];
    const [key] = (await publicKeys(old)).keys;
    for (const change of [{ d: 'A'.repeat(43) }, { kid: 'A'.repeat(43) }]) {
      const body = { keys: [{ ...key, ...change }] };
      expect((await fresh.call('/v1/seal-keys/retired', { method: 'POST', body })).status).toBe(422);
    }
    expect((await publicKeys(fresh)).keys).toEqual([]);
  });
});
