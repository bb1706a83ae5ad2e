import { describe, expect, test } from 'vitest';
import { everyItem, ifThere, SlipmarkProblem } from '../../worker/client/client.ts';
import { scripted } from './scripted-service.ts';

const NOW = { 'Retry-After': '0' };
const PACK = { pack: 'Q-TST-P1-1' };

/** @returns the problem that a call ends in */
async function problemOf(call: Promise<unknown>): Promise<SlipmarkProblem> {
  const error = await call.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  if (error instanceof SlipmarkProblem) return error;
  throw new Error(`No problem but ${error}`);
}

describe('a call', () => {
  test('puts path, query, headers and body where the interface has them', async () => {
    const { client, asked } = scripted([
      { status: 200, body: {}, headers: { ETag: '"abc"' } },
      { status: 201, body: {} },
    ]);
    await client.listAircraftPacks({ registration: 'Q/T', limit: 5 });
    await client.releaseVisit({
      registration: 'Q-TST',
      visit: 'v1',
      ifMatch: '"abc"',
      body: { by: 'jonas', knowsOfNoHazard: true },
    });
    const [list, release] = asked;
    expect(list).toMatchObject({ method: 'GET', url: 'https://slipmark.example/v1/aircraft/Q%2FT/packs?limit=5' });
    expect(list?.headers.get('Authorization')).toBe('Bearer k');
    expect(release?.url).toBe('https://slipmark.example/v1/aircraft/Q-TST/visits/v1/release');
    expect(release?.headers.get('If-Match')).toBe('"abc"');
    expect(release?.headers.get('Content-Type')).toBe('application/json');
    expect(JSON.parse(String(release?.body))).toEqual({ by: 'jonas', knowsOfNoHazard: true });
  });

  test('gives the tag beside the body, and the bytes as they came', async () => {
    const { client } = scripted([{ status: 200, body: { by: 'é' }, headers: { ETag: '"abc"' } }]);
    const { etag, body, bytes } = await client.getVisit({ registration: 'Q-TST', visit: 'v1' });
    expect(etag).toBe('"abc"');
    expect(body).toEqual({ by: 'é' });
    expect(new TextDecoder().decode(bytes)).toBe('{"by":"é"}');
  });

  test('gives files as bytes, also where they are JSON, and sends files as they are', async () => {
    const file = new Uint8Array([0x25, 0x50, 0, 0xff]);
    const { client, asked } = scripted([
      { status: 200, body: file, headers: { 'Content-Type': 'application/pdf' } },
      { status: 200, body: { a: 1 } },
      { status: 201, body: {} },
    ]);
    expect((await client.getPackPdf(PACK)).body).toEqual(file);
    expect(new TextDecoder().decode((await client.getPackRecord(PACK)).body)).toBe('{"a":1}');
    await client.putAttachment({ sha256: 'f'.repeat(64), body: file });
    expect(asked[2]?.body).toBe(file);
    expect(asked[2]?.headers.get('Content-Type')).toBe('application/octet-stream');
  });

  test('asks for the form that is wanted', async () => {
    const { client, asked } = scripted([
      { status: 200, body: '<p>', headers: { 'Content-Type': 'text/html; charset=utf-8' } },
    ]);
    const document = { registration: 'Q-TST', visit: 'v1', document: 'cover' };
    const { body } = await client.getDraftDocument({ ...document, accept: 'text/html' });
    expect(body.startsWith('<p>')).toBe(true);
    expect(asked[0]?.headers.get('Accept')).toBe('text/html');
  });
});

describe('waiting', () => {
  test('asks again where the service asks to wait, and says so', async () => {
    const waits: number[] = [];
    const answers = [
      { status: 429, headers: NOW },
      { status: 503, headers: { 'Retry-After': new Date(0).toUTCString() } },
      { status: 200, body: {} },
    ];
    const { client, asked } = scripted(answers, { onWait: (seconds) => waits.push(seconds) });
    await client.getPack(PACK);
    expect(asked).toHaveLength(3);
    expect(waits).toEqual([0, 0]);
  });

  test('sends the same key of repetition each time, a new one for a new call', async () => {
    const link = { ...PACK, body: { audience: 'owner' } } as const;
    const made = { status: 201, body: {} };
    const { client, asked } = scripted([{ status: 503, headers: NOW }, made, made, made]);
    await client.makeLink(link);
    await client.makeLink(link);
    await client.makeLink({ ...link, idempotencyKey: 'mine' });
    const keys = asked.map(({ headers }) => headers.get('Idempotency-Key'));
    expect(keys[0]).toMatch(/^[0-9a-f]{32}$/);
    expect(keys[1]).toBe(keys[0]);
    expect(keys[2]).not.toBe(keys[0]);
    expect(keys[3]).toBe('mine');
  });

  test('ends after the waits that are granted, with how long was asked for', async () => {
    const full = { status: 429, headers: NOW, body: { title: 'Used up' } };
    const { client, asked } = scripted([full, full, full], { mostWaits: 2 });
    expect(await problemOf(client.getPack(PACK))).toMatchObject({ status: 429, title: 'Used up', retryAfterS: 0 });
    expect(asked).toHaveLength(3);
  });

  test('ends at once when the caller loses patience', async () => {
    const patience = new AbortController();
    const { client, asked } = scripted([{ status: 503, headers: { 'Retry-After': '50' } }], {
      onWait: () => queueMicrotask(() => patience.abort(new Error('enough'))),
    });
    await expect(client.getPack(PACK, { signal: patience.signal })).rejects.toThrow('enough');
    expect(asked).toHaveLength(1);
  });
});

describe('SlipmarkProblem', () => {
  test('tells what the service said, with its findings', async () => {
    const findings = [{ code: 'X', severity: 'blocks', pointer: '/a', sentence: 'Because', remedy: 'Do' }];
    const problem = { type: '/problems/forbidden', title: 'The key does not allow this', detail: 'scope', findings };
    const { client } = scripted([{ status: 403, body: problem }]);
    const told = await problemOf(client.getPackPdf(PACK));
    expect(told).toMatchObject({ status: 403, ...problem });
    expect(told.message).toBe(
      'GET /v1/packs/Q-TST-P1-1/pack.pdf answered 403: The key does not allow this: scope\n  Because',
    );
  });

  test('tells what stands before the service in its own words, and JSON that is none', async () => {
    const { client } = scripted([
      { status: 502, body: '<h1>Bad gateway</h1>' },
      { status: 200, body: '<h1>Sign in</h1>', headers: { 'Content-Type': 'application/json' } },
    ]);
    expect(await problemOf(client.getPack(PACK))).toMatchObject({ status: 502, detail: '<h1>Bad gateway</h1>' });
    expect((await problemOf(client.getPack(PACK))).message).toContain('is not valid JSON');
  });

  test('is of status 0 where nobody answered', async () => {
    const fetch = () => Promise.reject(new TypeError('fetch failed'));
    const told = await problemOf(scripted([], { fetch }).client.getHealth());
    expect(told).toMatchObject({
      status: 0,
      message: 'GET https://slipmark.example/healthz: The service cannot be reached',
    });
  });

  test('is not thrown for what may not be there', async () => {
    const { client } = scripted([{ status: 404, body: { title: 'There is nothing here' } }, { status: 403 }]);
    expect(await ifThere(client.getPack(PACK))).toBe(undefined);
    await expect(ifThere(client.getPack(PACK))).rejects.toThrow('403');
  });
});

describe('a broken connection', () => {
  const DIGEST = { sha256: 'f'.repeat(64), body: new Uint8Array([1]) };
  const VISIT = { registration: 'Q-TST', visit: 'v1' };
  const release = { ...VISIT, ifMatch: '"abc"', body: { by: 'jonas', knowsOfNoHazard: true } };

  test('is no end of what may be repeated, before the answer or in the middle of it', async () => {
    const broken = [{ status: 0 }, { status: -1 }];
    const good = { status: 200, body: { pack: 'P' } };
    for (const call of ['getPack', 'putAttachment', 'releaseVisit', 'verify'] as const) {
      const { client, asked } = scripted([...broken, good]);
      if (call === 'getPack') await client.getPack(PACK);
      if (call === 'putAttachment') await client.putAttachment(DIGEST);
      if (call === 'verify') await client.verify({ body: { pdfSha256: DIGEST.sha256 } });
      if (call === 'releaseVisit') await client.releaseVisit(release);
      expect(asked.length, call).toBe(3);
      // The service knows a repeated request by its key.
      const keys = new Set(asked.map(({ headers }) => headers.get('Idempotency-Key')));
      expect(keys.size, call).toBe(1);
    }
  });

  test('ends what might be done twice, and what stays broken', async () => {
    const record = { aircraft: {} } as never;
    const creating = scripted([{ status: 0 }, { status: 201, body: {} }]);
    expect(await problemOf(creating.client.putVisit({ ...VISIT, body: record, ifNoneMatch: '*' }))).toMatchObject({
      status: 0,
    });
    const patching = scripted([{ status: 0 }, { status: 200, body: {} }]);
    await problemOf(patching.client.patchVisit({ ...VISIT, body: record, ifMatch: '"abc"' }));
    expect([creating.asked.length, patching.asked.length]).toEqual([1, 1]);
    const down = scripted([{ status: 0 }, { status: 0 }, { status: 0 }, { status: 0 }, { status: 200, body: {} }]);
    expect(await problemOf(down.client.getPack(PACK))).toMatchObject({ status: 0 });
    expect(down.asked.length).toBe(4);
  });
});

test('everyItem() follows a list to its end', async () => {
  const { client, asked } = scripted([
    { status: 200, headers: { Link: '</v1/packs?limit=2&after=b%2F2>; rel="next"' }, body: { items: [1, 2] } },
    { status: 200, body: { items: [3] } },
  ]);
  const items: unknown[] = [];
  for await (const item of everyItem(client.listPacks, { limit: 2 })) items.push(item);
  expect(items).toEqual([1, 2, 3]);
  expect(asked[1]?.url).toBe('https://slipmark.example/v1/packs?limit=2&after=b%2F2');
});
