import { describe, expect, test } from 'vitest';
import { keep, RECORD, release, type TestService, testService } from '../service.ts';

interface Pack {
  pack: string;
  pdfSha256: string;
  withdrawal: object | null;
}

const asked = async (service: TestService, pdfSha256: string): Promise<Record<string, unknown>> =>
  (await service.call('/v1/verifications', { method: 'POST', key: '', body: { pdfSha256 } })).json();

const withdrawn = (service: TestService, pack: string) =>
  service.call(`/v1/packs/${pack}/withdrawal`, {
    method: 'POST',
    body: { by: 'Jonas Veldt', reason: 'Weighed with the wrong certificate' },
  });

async function sealed(service: TestService, note = 'first'): Promise<Pack> {
  await keep(service, { ...RECORD, note });
  return (await release(service)).json<Pack>();
}

const pageOf = async (service: TestService, pack: string): Promise<() => Promise<string>> => {
  const body = { audience: 'owner' };
  const link = await service.call(`/v1/packs/${pack}/links`, { method: 'POST', body });
  const { url } = await link.json<{ url: string }>();
  return async () => (await service.call(new URL(url).pathname, { key: '' })).text();
};

describe('POST /v1/verifications', () => {
  test('knows a sealed file by its digest alone, without a key', async () => {
    const service = await testService();
    const { pack, pdfSha256 } = await sealed(service);
    expect(await asked(service, pdfSha256)).toMatchObject({ verdict: 'genuine', pack, workshop: service.workshop });
    expect(await asked(service, 'f'.repeat(64))).toEqual({ verdict: 'unknown' });
  });

  test('says of an earlier issue what replaces it', async () => {
    const service = await testService();
    const first = await sealed(service);
    const second = await sealed(service, 'second');
    expect(await asked(service, first.pdfSha256)).toMatchObject({ verdict: 'superseded', supersededBy: second.pack });
    expect(await asked(service, second.pdfSha256)).toMatchObject({ verdict: 'genuine' });
  });

  test('says that a pack was withdrawn, by whom and why', async () => {
    const service = await testService();
    const { pack, pdfSha256 } = await sealed(service);
    await withdrawn(service, pack);
    const withdrawal = { by: 'Jonas Veldt', reason: 'Weighed with the wrong certificate' };
    expect(await asked(service, pdfSha256)).toMatchObject({ verdict: 'withdrawn', withdrawal });
  });
});

describe('POST /v1/packs/{pack}/withdrawal', () => {
  test('says so on every link before anything else, and leaves the pack as it was', async () => {
    const service = await testService();
    const { pack } = await sealed(service);
    const page = await pageOf(service, pack);
    expect(await page()).toContain('<h1>Released</h1>');
    expect((await withdrawn(service, pack)).status).toBe(200);
    const after = await page();
    expect(after).toContain('<h1>Withdrawn</h1>');
    expect(after).toContain('Weighed with the wrong certificate');
    expect((await service.call(`/v1/packs/${pack}/pack.pdf`)).status).toBe(200);
  });

  test('names the person, and whom to ask, as the record of the pack has them', async () => {
    const service = await testService();
    const record = {
      ...RECORD,
      people: [{ id: 'jonas', name: 'Jonas Veldt' }],
      workshop: { name: 'Lower Meadow Hangar', contact: 'office@lower-meadow.example', address: 'Hangar 2' },
    };
    await keep(service, record);
    const { pack } = await (await release(service)).json<Pack>();
    const page = await pageOf(service, pack);
    expect(await page()).not.toContain('To be asked');
    const body = { by: 'jonas', reason: 'Wrong scale certificate for this aircraft.' };
    const answer = await service.call(`/v1/packs/${pack}/withdrawal`, { method: 'POST', body });
    expect(await answer.json()).toMatchObject({ withdrawal: { by: 'Jonas Veldt' } });
    const said = await page();
    expect(said).toContain('Jonas Veldt withdrew this release');
    expect(said).toContain('certificate for this aircraft. Do not fly on it: ask the workshop.');
    expect(said).toMatch(
      /ask the workshop\.<\/p>\s*<p class="detail">To be asked: Lower Meadow Hangar, office@lower-meadow\.example, Hangar 2</,
    );
  });

  test('names the workshop as the deployment knows it where the record does not', async () => {
    const service = await testService();
    const { pack } = await sealed(service);
    const page = await pageOf(service, pack);
    await withdrawn(service, pack);
    expect((await page()).match(/To be asked[^<]*/)?.[0]).toBe('To be asked: Test');
  });

  test('is said in the time of the workshop, as are release, supersession and reading', async () => {
    const service = await testService();
    const { pack } = await sealed(service);
    const page = await pageOf(service, pack);
    service.clock.at = Date.parse('2026-11-05T23:30:00Z');
    const released = await page();
    expect(released).toContain('<dt>On</dt><dd>5\u00a0Nov\u00a02026 13:00\u00a0+01:00</dd>');
    expect(released).toContain('As it stood on 6\u00a0Nov\u00a02026 00:30\u00a0+01:00');
    await withdrawn(service, pack);
    expect(await page()).toContain('withdrew this release on 6\u00a0Nov\u00a02026 00:30\u00a0+01:00');
    await sealed(service, 'second');
    for (const text of [released, await page()]) expect(text).not.toContain('UTC');
  });

  test('is an entry of the chain, once however often it is asked for', async () => {
    const service = await testService();
    const { pack } = await sealed(service);
    const [first, again] = [await withdrawn(service, pack), await withdrawn(service, pack)];
    expect(await again.json()).toEqual(await first.json());
    const ledger = await service.call('/v1/aircraft/Q-TST/ledger');
    const { items } = await ledger.json<{ items: { kind: string }[] }>();
    expect(items.filter(({ kind }) => kind === 'pack-withdrawn')).toHaveLength(1);
  });

  test('needs a key that may release, and a pack of the workshop', async () => {
    const [service, other] = [await testService(), await testService()];
    const { pack } = await sealed(service);
    expect((await withdrawn(other, pack)).status).toBe(404);
    const body = { label: 'tool', scopes: ['records'] };
    const { secret } = await (await service.call('/v1/keys', { method: 'POST', body })).json<{ secret: string }>();
    const refused = await service.call(`/v1/packs/${pack}/withdrawal`, { method: 'POST', key: secret, body: {} });
    expect(refused.status).toBe(403);
  });
});

describe('GET /v1/packs/{pack}/links', () => {
  test('tells when a link was opened and what was read', async () => {
    const service = await testService();
    const { pack } = await sealed(service);
    const page = await pageOf(service, pack);
    await page();
    service.clock.at += 60_000;
    await page();
    const links = await service.call(`/v1/packs/${pack}/links`);
    const { items } = await links.json<{
      items: { timesOpened: number; openings: { at: string; what: string }[] }[];
    }>();
    expect(items[0]).toMatchObject({ timesOpened: 2 });
    const openings = items[0]?.openings ?? [];
    expect(openings.map(({ what }) => what)).toEqual(['page', 'page']);
    expect(Date.parse(openings[0]?.at ?? '') - Date.parse(openings[1]?.at ?? '')).toBe(60_000);
  });
});
