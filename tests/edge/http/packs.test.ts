import { describe, expect, test, vi } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { archiveFailingOn } from '../failing-bucket.ts';
import { keep, RECORD, release, testService, textOf } from '../service.ts';

const PACK = '/v1/packs/Q-TST-P1-1';

async function released(replaced: Parameters<typeof testService>[0] = {}) {
  const service = await testService(replaced);
  await keep(service);
  await release(service);
  return service;
}

interface Digests {
  pdfSha256: string;
  recordSha256: string;
  manifestSha256: string;
}

describe('GET pack', () => {
  test('names digests that its files have', async () => {
    const { call } = await released();
    const pack = await (await call(PACK)).json<Digests>();
    for (const [file, digest] of [
      ['pack.pdf', pack.pdfSha256],
      ['record.json', pack.recordSha256],
      ['manifest.json', pack.manifestSha256],
    ]) {
      const response = await call(`${PACK}/${file}`);
      expect(response.headers.get('ETag')).toBe(`"${digest}"`);
      expect(response.headers.get('Cache-Control')).toContain('immutable');
      expect(await sha256(await response.bytes())).toBe(digest);
    }
  });

  test('takes the name of the pack in any case, and answers 404 to one that does not exist', async () => {
    const { call } = await released();
    expect((await call('/v1/packs/q-tst-p1-1')).status).toBe(200);
    for (const name of ['Q-TST-P1-2', 'Q-TST-P0-1', 'nonsense', '%ZZ'])
      expect((await call(`/v1/packs/${name}`)).status).toBe(404);
  });

  test('of another workshop looks like one that does not exist', async () => {
    await released();
    const stranger = await testService();
    const answers = await Promise.all(['Q-TST', 'Q-NIL'].map((name) => stranger.call(`/v1/packs/${name}-P1-1`)));
    const [theirs, nobodys] = await Promise.all(answers.map((answer) => answer.text()));
    expect(answers.map(({ status }) => status)).toEqual([404, 404]);
    expect(theirs).toBe(nobodys);
    for (const path of ['', '/visits/v1', '/visits/v1/assessment', '/visits/v1/pack.pdf'])
      expect((await stranger.call(`/v1/aircraft/Q-TST${path}`)).status).toBe(404);
  });
});

describe('GET pack.pdf', () => {
  test('has a name to be saved under', async () => {
    const { call } = await released();
    const { headers } = await call(`${PACK}/pack.pdf`);
    expect(headers.get('Content-Disposition')).toBe('inline; filename="Q-TST-P1-1-release-pack.pdf"');
    expect(headers.get('Content-Type')).toBe('application/pdf');
  });

  test('answers HEAD with the headers and no body', async () => {
    const { call } = await released();
    const whole = await call(`${PACK}/pack.pdf`);
    const head = await call(`${PACK}/pack.pdf`, { method: 'HEAD' });
    expect(head.status).toBe(200);
    expect(await head.text()).toBe('');
    for (const name of ['ETag', 'Content-Length', 'Accept-Ranges'])
      expect(head.headers.get(name)).toBe(whole.headers.get(name));
  });

  test('answers 304 to the tag that is known', async () => {
    const { call } = await released();
    const tag = (await call(`${PACK}/pack.pdf`)).headers.get('ETag') ?? '';
    expect((await call(`${PACK}/pack.pdf`, { headers: { 'If-None-Match': `W/${tag}` } })).status).toBe(304);
  });

  test('answers parts, and 416 beyond the end', async () => {
    const { call } = await released();
    const text = await textOf(await call(`${PACK}/pack.pdf`));
    const part = async (range: string, headers = {}) =>
      call(`${PACK}/pack.pdf`, { headers: { Range: range, ...headers } });
    const first = await part('bytes=0-3');
    expect(first.status).toBe(206);
    expect(first.headers.get('Content-Range')).toBe(`bytes 0-3/${text.length}`);
    expect(await textOf(first)).toBe('%PDF');
    expect(await textOf(await part('bytes=-5'))).toBe(text.slice(-5));
    expect(await textOf(await part('bytes=5-'))).toBe(text.slice(5));
    const beyond = await part(`bytes=${text.length}-`);
    expect(beyond.status).toBe(416);
    expect(beyond.headers.get('Content-Range')).toBe(`bytes */${text.length}`);
    expect((await part('bytes=0-3', { 'If-Range': '"old"' })).status).toBe(200);
    expect((await part('lines=1-2')).status).toBe(200);
  });

  test('answers 503 while the bucket cannot be read', async () => {
    let isDown = false;
    const { call } = await released({ world: { archive: archiveFailingOn('get', () => isDown) } });
    isDown = true;
    expect((await call(`${PACK}/pack.pdf`)).status).toBe(503);
  });
});

describe('GET packs of the workshop', () => {
  test('converges on what the ledgers hold, newest first, page by page', async () => {
    const service = await released();
    service.clock.at += 60_000;
    await keep(service, { ...RECORD, note: 'corrected' });
    await release(service);
    service.clock.at += 60_000;
    const path = '/v1/aircraft/Q-UVW/visits/v1';
    await keep(service, { aircraft: { registration: 'Q-UVW' } }, path);
    await release(service, {}, path);
    await vi.waitFor(async () => {
      const { items } = await (await service.call('/v1/packs')).json<{ items: object[] }>();
      expect(items).toMatchObject([
        { pack: 'Q-UVW-P1-1', supersededBy: null },
        { pack: 'Q-TST-P1-2', supersededBy: null },
        { pack: 'Q-TST-P1-1', supersededBy: 'Q-TST-P1-2' },
      ]);
    });
    const page = await service.call('/v1/packs?limit=2');
    const next = /<(.+)>; rel="next"/.exec(page.headers.get('Link') ?? '')?.[1] ?? '';
    expect(await (await service.call(next)).json()).toMatchObject({ items: [{ pack: 'Q-TST-P1-1' }] });
  });

  test('shows nothing of other workshops', async () => {
    await released();
    const stranger = await testService();
    expect(await (await stranger.call('/v1/packs')).json()).toEqual({ items: [] });
  });
});

describe('GET aircraft', () => {
  test('sums up, lists packs newest first and gives the chain', async () => {
    const service = await released();
    await keep(service, { ...RECORD, note: 'corrected' });
    await release(service);
    const aircraft = await service.call('/v1/aircraft/Q-TST');
    expect(await aircraft.json()).toMatchObject({
      visits: 1,
      packs: 2,
      newest: { pack: 'Q-TST-P1-2' },
      head: { seq: 4 },
    });
    const packs = await service.call('/v1/aircraft/Q-TST/packs?limit=1');
    expect(await packs.json()).toMatchObject({ items: [{ pack: 'Q-TST-P1-2' }] });
    const next = /<(.+)>; rel="next"/.exec(packs.headers.get('Link') ?? '')?.[1] ?? '';
    expect(await (await service.call(next)).json()).toMatchObject({ items: [{ pack: 'Q-TST-P1-1' }] });
  });

  test('gives a chain that anybody can verify from the answer alone', async () => {
    const service = await released();
    const answer = await service.call('/v1/aircraft/Q-TST/ledger');
    const { items } = await answer.json<{ items: Record<string, string>[] }>();
    expect(items.map(({ kind }) => kind)).toEqual(['visit-kept', 'pack-sealed']);
    let previous = '0'.repeat(64);
    for (const { seq, at, kind, body, digest, ...rest } of items) {
      expect(rest.previous).toBe(previous);
      expect(await sha256(JSON.stringify([previous, seq, at, kind, body]))).toBe(digest);
      previous = digest ?? '';
    }
  });
});
