import { describe, expect, test } from 'vitest';
import full from '../../../fixtures/records/version-1/nose-wheel-full.json' with { type: 'json' };
import present from '../../../fixtures/visits/nose-wheel-full.json' with { type: 'json' };
import * as pipeline from '../../../worker/core/core.ts';
import { canonicalJson } from '../../../worker/core/pack/canonical-json.ts';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { SCHEMA_VERSION, upgrade } from '../../../worker/core/record/upgrades.ts';
import { withLaterFields } from '../../with-later-fields.ts';
import { type TestService, testService } from '../service.ts';

const VISIT = '/v1/aircraft/Q-SLM/visits/v1';
const PLANE = '/antennas/items/0/groundPlane';

/** Files are uploaded by tests of their own. */
const { attachments: _, ...OLD } = withLaterFields(full, present);
const PRESENT = upgrade(OLD) as typeof OLD;
const DIGEST = await sha256(canonicalJson(OLD));

type Items = { groundPlane?: object }[];
interface Problem {
  findings: { code: string; pointer: string; remedy: string }[];
}

/** The antennas of the record, the first with a part of its ground plane changed. */
const antennasWith = (record: { antennas: object }, change: object) => {
  const { items, ...rest } = record.antennas as { items: Items };
  const [first, ...others] = items;
  return { antennas: { ...rest, items: [{ ...first, groundPlane: { ...first?.groundPlane, ...change } }, ...others] } };
};

async function keptService(): Promise<TestService> {
  const service = await testService({ pipeline });
  service.clock.at = Date.parse(OLD.visit.workEndedAt) + 3_600_000;
  expect((await service.call(VISIT, { method: 'PUT', body: OLD })).status).toBe(201);
  return service;
}

const patch = ({ call }: TestService, body: object, tag = DIGEST): Promise<Response> =>
  call(VISIT, {
    method: 'PATCH',
    body: JSON.stringify(body),
    headers: { 'Content-Type': 'application/merge-patch+json', 'If-Match': `"${tag}"` },
  });

describe('a record of version 1', () => {
  test('is assessed as the same record of the present version', async () => {
    const { call } = await testService({ pipeline });
    const assess = async (body: object) =>
      (await call('/v1/assessments', { method: 'POST', body })).json<Record<string, unknown>>();
    const { recordSha256, assessmentSha256: _a, ...old } = await assess(OLD);
    const { recordSha256: _r, assessmentSha256: _b, ...present } = await assess(PRESENT);
    expect(recordSha256).toBe(DIGEST);
    expect(old).toEqual(present);
  });

  test('is kept as it was posted, under the digest of that', async () => {
    const { call } = await keptService();
    const kept = await call(VISIT);
    expect(kept.headers.get('ETag')).toBe(`"${DIGEST}"`);
    expect(await kept.json()).toEqual(OLD);
    expect((await call(VISIT, { headers: { 'If-None-Match': `"${DIGEST}"` } })).status).toBe(304);
    const again = await call(VISIT, { method: 'PUT', body: OLD });
    expect([again.status, await again.json()]).toMatchObject([200, { version: 1, recordSha256: DIGEST }]);
  });

  test('is replaced by one of the present version over its tag', async () => {
    const { call } = await keptService();
    const put = (tag: string) => call(VISIT, { method: 'PUT', body: PRESENT, headers: { 'If-Match': tag } });
    expect((await put('"other"')).status).toBe(412);
    expect(await (await put(`"${DIGEST}"`)).json()).toMatchObject({ version: 2 });
    expect(await (await call(VISIT)).json()).toEqual(PRESENT);
  });

  test('is refused with pointers into what was posted', async () => {
    const { call } = await testService({ pipeline });
    const wrong = { ...OLD, ...antennasWith(OLD, { leastRadius: -1, minimumRadius: 5 }) };
    const answer = await call(VISIT, { method: 'PUT', body: wrong });
    expect(answer.status).toBe(422);
    const { findings } = await answer.json<Problem>();
    expect(findings.map(({ code, pointer }) => `${code} ${pointer}`).sort()).toEqual([
      `RECORD_KEY_UNKNOWN ${PLANE}/minimumRadius`,
      `RECORD_VALUE_WRONG ${PLANE}/leastRadius`,
    ]);
  });
});

describe('a patch of a record of version 1', () => {
  test('without a version has the names of the record', async () => {
    const service = await keptService();
    const answer = await patch(service, antennasWith(OLD, { leastRadius: 1 }));
    expect(answer.status).toBe(200);
    const { findings } = await answer.json<Problem>();
    expect(findings.map(({ code, pointer }) => `${code} ${pointer}`)).toContain(`PLATE_SMALL ${PLANE}`);
    expect(await (await service.call(VISIT)).json()).toEqual({ ...OLD, ...antennasWith(OLD, { leastRadius: 1 }) });
  });

  test('with names of a later version, which it does not state, is refused and says how to go on', async () => {
    const answer = await patch(await keptService(), antennasWith(PRESENT, {}));
    expect(answer.status).toBe(422);
    const { findings } = await answer.json<Problem>();
    expect(findings.find(({ pointer }) => pointer === `${PLANE}/minimumRadius`)?.remedy).toBe(
      'Write "leastRadius", its name in schemaVersion 1',
    );
  });

  test('that states the present version upgrades the record first', async () => {
    const service = await keptService();
    const change = { schemaVersion: SCHEMA_VERSION, ...antennasWith(PRESENT, { minimumRadius: 700 }) };
    expect((await patch(service, change)).status).toBe(200);
    expect(await (await service.call(VISIT)).json()).toEqual({ ...PRESENT, ...change });
    expect((await patch(service, change)).status).toBe(412);
  });

  test('that states the present version and nothing else upgrades the record', async () => {
    const service = await keptService();
    expect((await patch(service, { schemaVersion: SCHEMA_VERSION })).status).toBe(200);
    expect(await (await service.call(VISIT)).json()).toEqual(PRESENT);
  });

  test('that states a version of the future is refused', async () => {
    const answer = await patch(await keptService(), { schemaVersion: SCHEMA_VERSION + 1 });
    expect(answer.status).toBe(422);
    expect((await answer.json<Problem>()).findings).toMatchObject([{ pointer: '/schemaVersion' }]);
  });
});

test('a patch of the first version over a record of the present one is never taken by halves', async () => {
  const service = await testService({ pipeline });
  await service.call(VISIT, { method: 'PUT', body: PRESENT });
  const tag = await sha256(canonicalJson(PRESENT));
  expect((await patch(service, { schemaVersion: 1 }, tag)).status).toBe(422);
  expect((await patch(service, antennasWith(OLD, {}), tag)).status).toBe(422);
  expect((await patch(service, antennasWith(PRESENT, { minimumRadius: 700 }), tag)).status).toBe(200);
});

test('a pack of version 1 holds the record as posted, and a visit of the present version follows it', async () => {
  const { call, clock } = await keptService();
  const release = async (path: string, by: string) => {
    const headers = { 'If-Match': (await call(`${path}/assessment`)).headers.get('ETag') ?? '' };
    return call(`${path}/release`, { method: 'POST', body: { by, knowsOfNoHazard: true }, headers });
  };
  const sealed = await release(VISIT, OLD.release.by);
  expect(sealed.status, await sealed.clone().text()).toBe(201);
  const { pack, recordSha256 } = await sealed.json<{ pack: string; recordSha256: string }>();
  expect(recordSha256).toBe(DIGEST);
  expect(await (await call(`/v1/packs/${pack}/record.json`)).text()).toBe(canonicalJson(OLD));
  const link = await call(`/v1/packs/${pack}/links`, { method: 'POST', body: { audience: 'inspector' } });
  const { pathname } = new URL((await link.json<{ url: string }>()).url);
  expect((await call(pathname, { key: '' })).status).toBe(200);
  const baseline = await (await call(`/v1/packs/${pack}/baseline.json`)).json<object>();
  const due = await (await call('/v1/aircraft/Q-SLM/due')).json<{ deferred: { openItem: string }[] }>();
  expect(due.deferred).toHaveLength(1);
  clock.at += 60_000;
  const amended = {
    ...PRESENT,
    workshop: { ...PRESENT.workshop, name: 'Upper Meadow' },
    release: { ...PRESENT.release, reasonForIssue: 'Name of the workshop corrected' },
  };
  const put = await call(VISIT, { method: 'PUT', body: amended, headers: { 'If-Match': `"${DIGEST}"` } });
  expect(put.status).toBe(200);
  const second = await release(VISIT, OLD.release.by);
  expect(await second.json()).toMatchObject({ issue: 2, supersedes: pack });
  expect(await (await call('/v1/aircraft/Q-SLM/due')).json()).toMatchObject({ deferred: due.deferred });
  const { source: _s, reference: _n, date: _d, ...carried } = baseline as Record<string, unknown>;
  expect(await (await call('/v1/packs/Q-SLM-P1-2/baseline.json')).json()).toMatchObject(carried);
});
