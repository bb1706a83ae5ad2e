import { describe, expect, test } from 'vitest';
import weighingOnly from '../../../fixtures/visits/weighing-only.json' with { type: 'json' };
import * as pipeline from '../../../worker/core/core.ts';
import { type TestService, testService } from '../service.ts';

const VISIT = '/v1/aircraft/Q-WGT/visits/weighing';
const RUFUS = {
  name: 'Rufus Tallant',
  capacity: 'Inspector',
  licence: 'HC-I-042',
  scope: ['airframe', 'release'],
  until: '2035-12-31',
};
const EDDA = { name: 'Edda Marlowe', capacity: 'Mechanic', licence: 'HC-M-118', scope: ['airframe', 'weighing'] };
const TRAINEE = { name: 'Tom Trainee', capacity: 'Trainee', licence: null, scope: ['release'] };

/** A workshop with a table of people, and a key in the hand of one of them. */
async function workshopOf(people: Record<string, object>, person: string): Promise<TestService & { personal: string }> {
  const service = await testService({ pipeline });
  service.clock.at = Date.parse('2026-11-10T12:00:00Z');
  for (const [id, body] of Object.entries(people))
    expect((await service.call(`/v1/people/${id}`, { method: 'PUT', body })).status).toBe(201);
  const body = { label: 'phone', scopes: ['records', 'release'], person };
  const made = await service.call('/v1/keys', { method: 'POST', body });
  return { ...service, personal: (await made.json<{ secret: string }>()).secret };
}

async function released({ call }: TestService, record: object, by: string, key: string): Promise<Response> {
  const before = await call(VISIT);
  const condition = before.ok ? { 'If-Match': before.headers.get('ETag') ?? '' } : { 'If-None-Match': '*' };
  expect((await call(VISIT, { method: 'PUT', body: record, headers: condition, key })).ok).toBe(true);
  const headers = { 'If-Match': (await call(`${VISIT}/assessment`, { key })).headers.get('ETag') ?? '' };
  return call(`${VISIT}/release`, { method: 'POST', body: { by, knowsOfNoHazard: true }, headers, key });
}

const codes = async (response: Response): Promise<string[]> =>
  (await response.json<{ findings: { code: string }[] }>()).findings.map(({ code }) => code);

const renamed = (from: string, to: string): object =>
  JSON.parse(JSON.stringify(weighingOnly).replaceAll(`"${from}"`, `"${to}"`));

describe('a key in the hand of one person', () => {
  test('does not release in the name of another by calling them by its own identifier', async () => {
    const service = await workshopOf({ rufus: RUFUS, trainee: TRAINEE }, 'trainee');
    const record = renamed('rufus', 'trainee');
    const response = await released(service, record, 'trainee', service.personal);
    expect(response.status).toBe(409);
    expect(await codes(response)).toContain('PERSON_NOT_AS_REGISTERED');
  });

  test('nor with a capacity, a licence, a scope or a validity that the workshop does not know of', async () => {
    const service = await workshopOf({ rufus: RUFUS }, 'rufus');
    for (const change of [
      { capacity: 'Chief Inspector' },
      { authorisation: 'HC-I-999' },
      { scope: ['airframe', 'engine', 'release'] },
      { validUntil: '2099-12-31' },
    ]) {
      const people = weighingOnly.people.map((person) => (person.id === 'rufus' ? { ...person, ...change } : person));
      const response = await released(service, { ...weighingOnly, people }, 'rufus', service.personal);
      expect(await codes(response), JSON.stringify(change)).toEqual(['PERSON_NOT_AS_REGISTERED']);
    }
    expect((await released(service, weighingOnly, 'rufus', service.personal)).status).toBe(201);
  });

  test('is named by chain, manifest and log, and so is the person', async () => {
    const service = await workshopOf({ rufus: RUFUS }, 'rufus');
    const { pack } = await (await released(service, weighingOnly, 'rufus', service.personal)).json<{ pack: string }>();
    const keys = await (await service.call('/v1/keys')).json<{ items: { key: string; person: string | null }[] }>();
    const { key } = keys.items.find(({ person }) => person === 'rufus') ?? {};
    const manifest = await (await service.call(`/v1/packs/${pack}/manifest.json`)).json<object>();
    expect(manifest).toMatchObject({
      format: 'slipmark-manifest/2',
      sealedBy: { key, person: 'rufus' },
      workshop: { id: service.workshop, name: 'Test' },
      signatures: [],
      entriesSha256: null,
      notCovered: [],
    });
    const entries = await (await service.call('/v1/aircraft/Q-WGT/ledger')).json<{ items: { body: string }[] }>();
    for (const { body } of entries.items) expect(JSON.parse(body)).toMatchObject({ form: 2, key, person: 'rufus' });
    expect(service.events).toContainEqual({ code: 'RELEASE_SEALED', pack, issue: 1, key });
  });

  test('withdraws in that name alone, with the right to release, and leaves nothing that cannot be printed', async () => {
    const people = { rufus: RUFUS, trainee: TRAINEE, edda: EDDA };
    const service = await workshopOf(people, 'trainee');
    const { pack } = await (await released(service, weighingOnly, 'rufus', service.key)).json<{ pack: string }>();
    const withdrawal = (body: object, key: string) =>
      service.call(`/v1/packs/${pack}/withdrawal`, { method: 'POST', body, key });
    const reason = 'the wrong scale';
    expect((await withdrawal({ by: 'Rufus Tallant', reason }, service.personal)).status).toBe(403);
    expect((await withdrawal({ by: 'Nobody', reason }, service.key)).status).toBe(403);
    expect((await withdrawal({ by: 'edda', reason }, service.key)).status).toBe(403);
    const rights = (body: object) => service.call('/v1/people/rufus', { method: 'PUT', body });
    for (const body of [
      { ...RUFUS, until: '2026-11-09' },
      { ...RUFUS, from: '2026-11-11' },
    ]) {
      await rights(body);
      expect((await withdrawal({ by: 'rufus', reason }, service.key)).status).toBe(403);
    }
    await rights(RUFUS);
    for (const hostile of [' ', '.', '\u200b\u00a0', 'a\u0000b', 'a\u202eb', 'a\nb'])
      expect((await withdrawal({ by: 'rufus', reason: hostile }, service.key)).status).toBe(422);
    const done = await withdrawal({ by: 'trainee', reason }, service.personal);
    expect(await done.json()).toMatchObject({ withdrawal: { by: 'Tom Trainee', reason } });
  });
});

describe('a workshop that keeps a table of people', () => {
  test('has nobody release who is not in it, or not on this day, whatever key asks', async () => {
    const service = await workshopOf({ edda: EDDA }, 'edda');
    const strict = await released(service, weighingOnly, 'rufus', service.key);
    expect(await codes(strict)).toContain('RELEASER_NOT_REGISTERED');
    const enter = (body: object) => service.call('/v1/people/rufus', { method: 'PUT', body });
    await enter({ ...RUFUS, from: '2026-11-11' });
    expect(await codes(await released(service, weighingOnly, 'rufus', service.key))).toContain(
      'RELEASER_NOT_REGISTERED',
    );
    await enter(RUFUS);
    expect((await released(service, weighingOnly, 'rufus', service.key)).status).toBe(201);
  });

  test('is told every defect of an entry, and who entered it', async () => {
    const service = await testService();
    const put = (id: string, body: object) => service.call(`/v1/people/${id}`, { method: 'PUT', body });
    const wrong = await put('rufus', { name: 'a\u0007', capacity: '', scope: ['flying'], from: '2026-02-30', more: 1 });
    expect(wrong.status).toBe(422);
    const { findings } = await wrong.json<{ findings: { pointer: string }[] }>();
    expect(findings.map(({ pointer }) => pointer).sort()).toEqual(['/capacity', '/from', '/more', '/name', '/scope/0']);
    expect((await put('rufus', { ...RUFUS, from: '2036-01-01' })).status).toBe(422);
    expect((await put('ru/fus', RUFUS)).status).toBe(404);
    expect((await put('rufus', RUFUS)).status).toBe(201);
    const { items } = await (await service.call('/v1/people')).json<{ items: object[] }>();
    expect(items).toMatchObject([{ id: 'rufus', ...RUFUS, from: null, enteredAt: '2026-11-05T12:00:00.000Z' }]);
    expect((await service.call('/v1/people/mila')).status).toBe(404);
  });
});
