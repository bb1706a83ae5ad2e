import { describe, expect, test } from 'vitest';
import { BLOCKING } from '../pipeline-double.ts';
import { keep, RECORD, testService, textOf, VISIT } from '../service.ts';

const put = (body: unknown, headers: Record<string, string> = {}) => ({ method: 'PUT', body, headers });
const patch = (body: object, headers: Record<string, string> = {}) => ({
  method: 'PATCH',
  body: JSON.stringify(body),
  headers: { 'Content-Type': 'application/merge-patch+json', ...headers },
});

describe('PUT visit', () => {
  test('keeps a new record and answers 201 with its tag', async () => {
    const { call } = await testService();
    const response = await call(VISIT, put(RECORD));
    expect(response.status).toBe(201);
    expect(response.headers.get('Location')).toBe(VISIT);
    const state = await response.json<{ recordSha256: string }>();
    expect(state).toMatchObject({ visit: 'v1', version: 1, state: 'working', pack: null, isReleasable: true });
    expect(response.headers.get('ETag')).toBe(`"${state.recordSha256}"`);
    expect(await (await call(VISIT)).json()).toEqual(RECORD);
  });

  test('keeps a record that the gate blocks, and says so', async () => {
    const { call } = await testService();
    const response = await call(VISIT, put({ ...RECORD, isBlocked: true }));
    expect(response.status).toBe(201);
    expect(await response.json()).toMatchObject({ isReleasable: false, findings: [{ code: BLOCKING.code }] });
  });

  test('refuses to replace without If-Match, and with another tag', async () => {
    const { call } = await testService();
    await call(VISIT, put(RECORD));
    const changed = { ...RECORD, note: 'second' };
    expect((await call(VISIT, put(changed))).status).toBe(428);
    expect((await call(VISIT, put(changed, { 'If-Match': '"other"' }))).status).toBe(412);
    expect((await call(VISIT, put(changed, { 'If-None-Match': '*' }))).status).toBe(412);
    expect(await (await call(VISIT)).json()).toEqual(RECORD);
  });

  test('refuses a weak tag, which never matches', async () => {
    const { call } = await testService();
    const tag = (await call(VISIT, put(RECORD))).headers.get('ETag');
    expect((await call(VISIT, put({ ...RECORD, note: 'x' }, { 'If-Match': `W/${tag}` }))).status).toBe(412);
  });

  test('refuses If-Match where there is no visit', async () => {
    const { call } = await testService();
    expect((await call(VISIT, put(RECORD, { 'If-Match': '*' }))).status).toBe(412);
  });

  test('replaces over the tag that was read, and counts versions', async () => {
    const { call } = await testService();
    const tag = (await call(VISIT, put(RECORD))).headers.get('ETag') ?? '';
    const response = await call(VISIT, put({ ...RECORD, note: 'second' }, { 'If-Match': `"other", ${tag}` }));
    expect(response.status).toBe(200);
    expect(await response.json()).toMatchObject({ version: 2 });
  });

  test('answers a repeated write of the same record as standing', async () => {
    const { call } = await testService();
    await call(VISIT, put(RECORD));
    const response = await call(VISIT, put(RECORD));
    expect(response.status).toBe(200);
    expect(await response.json()).toMatchObject({ version: 1 });
  });

  test('lets one of two writers over the same tag win', async () => {
    const service = await testService();
    const tag = (await keep(service)).headers.get('ETag') ?? '';
    const writes = ['a', 'b'].map((note) => service.call(VISIT, put({ ...RECORD, note }, { 'If-Match': tag })));
    const statuses = (await Promise.all(writes)).map(({ status }) => status);
    expect(statuses.sort()).toEqual([200, 412]);
  });

  test('does not keep what does not fit, and lists every issue', async () => {
    const { call } = await testService();
    const response = await call(VISIT, put({ aircraft: {} }));
    expect(response.status).toBe(422);
    expect(response.headers.get('Content-Type')).toBe('application/problem+json');
    expect(await response.json()).toMatchObject({
      type: '/problems/record-not-valid',
      status: 422,
      findings: [{ code: 'RECORD_FIELD_MISSING', pointer: '/aircraft' }],
    });
    expect((await call(VISIT)).status).toBe(404);
  });

  test('refuses a record of another aircraft', async () => {
    const { call } = await testService();
    const response = await call(VISIT, put({ ...RECORD, aircraft: { registration: 'Q-OTH' } }));
    expect(response.status).toBe(422);
    expect(await response.json()).toMatchObject({ findings: [{ code: 'RECORD_REGISTRATION_DIFFERS' }] });
  });

  test('takes the registration in the address in any case, and refuses what cannot be one', async () => {
    const { call } = await testService();
    expect((await call('/v1/aircraft/q-tst/visits/v1', put(RECORD))).status).toBe(201);
    expect((await call(VISIT)).status).toBe(200);
    for (const path of ['/v1/aircraft/Q--TST/visits/v1', '/v1/aircraft/Q-TST/visits/.v', `${VISIT}${'x'.repeat(40)}`])
      expect((await call(path, put(RECORD))).status).toBe(400);
  });
});

describe('PATCH visit', () => {
  test('merges: null removes, a value replaces', async () => {
    const service = await testService();
    const tag = (await keep(service)).headers.get('ETag') ?? '';
    const response = await service.call(VISIT, patch({ note: null, isBlocked: false }, { 'If-Match': tag }));
    expect(response.status).toBe(200);
    expect(response.headers.get('ETag')).not.toBe(tag);
    expect(await (await service.call(VISIT)).json()).toEqual({ aircraft: RECORD.aircraft, isBlocked: false });
  });

  test('needs If-Match, and the present tag', async () => {
    const service = await testService();
    await keep(service);
    expect((await service.call(VISIT, patch({ note: 'x' }))).status).toBe(428);
    expect((await service.call(VISIT, patch({ note: 'x' }, { 'If-Match': '"old"' }))).status).toBe(412);
    expect((await service.call(VISIT, patch({ note: 'x' }, { 'If-Match': '*' }))).status).toBe(200);
  });

  test('keeps nothing when the result does not fit', async () => {
    const service = await testService();
    const tag = (await keep(service)).headers.get('ETag') ?? '';
    expect((await service.call(VISIT, patch({ aircraft: null }, { 'If-Match': tag }))).status).toBe(422);
    expect(await (await service.call(VISIT)).json()).toEqual(RECORD);
  });

  test('answers 415 with Accept-Patch to another kind of patch, 404 where there is no visit', async () => {
    const service = await testService();
    const wrong = await service.call(VISIT, { method: 'PATCH', body: { note: 'x' }, headers: { 'If-Match': '*' } });
    expect(wrong.status).toBe(415);
    expect(wrong.headers.get('Accept-Patch')).toBe('application/merge-patch+json');
    expect((await service.call(VISIT, patch({ note: 'x' }, { 'If-Match': '*' }))).status).toBe(404);
  });
});

describe('GET visit', () => {
  test('answers 304 to the tag that is known', async () => {
    const service = await testService();
    const tag = (await keep(service)).headers.get('ETag') ?? '';
    const response = await service.call(VISIT, { headers: { 'If-None-Match': tag } });
    expect(response.status).toBe(304);
    expect(response.headers.get('ETag')).toBe(tag);
  });

  test('lists visits page by page with a link to the next', async () => {
    const service = await testService();
    for (const visit of ['v1', 'v2', 'v3']) await keep(service, RECORD, `/v1/aircraft/Q-TST/visits/${visit}`);
    const page = await service.call('/v1/aircraft/Q-TST/visits?limit=2');
    expect(await page.json()).toMatchObject({ items: [{ visit: 'v1' }, { visit: 'v2' }] });
    const next = /<(.+)>; rel="next"/.exec(page.headers.get('Link') ?? '')?.[1] ?? '';
    const last = await service.call(next);
    expect(await last.json()).toMatchObject({ items: [{ visit: 'v3' }] });
    expect(last.headers.get('Link')).toBeNull();
    expect((await service.call('/v1/aircraft/Q-TST/visits?limit=0')).status).toBe(400);
  });
});

describe('drafts', () => {
  test('assessment carries its own tag, not that of the visit', async () => {
    const service = await testService();
    const visitTag = (await keep(service)).headers.get('ETag');
    const response = await service.call(`${VISIT}/assessment`);
    expect(response.status).toBe(200);
    expect(response.headers.get('ETag')).toMatch(/^"[0-9a-f]{64}"$/);
    expect(response.headers.get('ETag')).not.toBe(visitTag);
  });

  test('pack.pdf takes the paper that is asked for', async () => {
    const service = await testService();
    await keep(service);
    const response = await service.call(`${VISIT}/pack.pdf?paper=Letter`);
    expect(response.headers.get('Content-Type')).toBe('application/pdf');
    expect(response.headers.get('Content-Disposition')).toContain('not-released');
    expect(await textOf(response)).toBe('%PDF draft pack Letter');
    expect((await service.call(`${VISIT}/pack.pdf?paper=A5`)).status).toBe(400);
  });

  test('documents come as HTML with a banner or as PDF, by Accept', async () => {
    const service = await testService();
    await keep(service, { ...RECORD, note: 'Ünder' });
    const path = `${VISIT}/documents/owner-summary`;
    const html = await service.call(path);
    expect(html.headers.get('Content-Type')).toBe('text/html; charset=utf-8');
    const text = await html.text();
    expect(text).toContain('Not released');
    expect(text).toContain('<h1>Ünder</h1>');
    const pdf = await service.call(path, { headers: { Accept: 'text/html;q=0.5, application/pdf' } });
    expect(await textOf(pdf)).toBe('%PDF draft owner-summary undefined');
    expect(pdf.headers.get('Vary')).toBe('Accept');
    expect((await service.call(path, { headers: { Accept: 'image/png' } })).status).toBe(406);
    expect((await service.call(`${VISIT}/documents/none`)).status).toBe(404);
  });

  test('POST assessments keeps nothing', async () => {
    const { call } = await testService();
    const response = await call('/v1/assessments', { method: 'POST', body: RECORD });
    expect(response.status).toBe(200);
    expect((await call('/v1/aircraft/Q-TST')).status).toBe(404);
  });
});
