import { describe, expect, test } from 'vitest';
import { keep, RECORD, release, type TestService, testService } from '../service.ts';

const AIRCRAFT = '/v1/aircraft/Q-TST';
const visit = (name: string): string => `${AIRCRAFT}/visits/${name}`;

interface Pack {
  pack: string;
  pdfSha256: string;
}

async function sealed(service: TestService, name: string, note: string): Promise<Pack> {
  await keep(service, { ...RECORD, note }, visit(name));
  const response = await release(service, {}, visit(name));
  expect(response.status).toBe(201);
  service.clock.at += 60_000;
  return response.json<Pack>();
}

async function withdraw(service: TestService, pack: string): Promise<void> {
  const body = { by: 'Jonas Veldt', reason: 'Weighed with the wrong certificate' };
  expect((await service.call(`/v1/packs/${pack}/withdrawal`, { method: 'POST', body })).status).toBe(200);
  service.clock.at += 60_000;
}

async function linkTo(service: TestService, pack: string): Promise<string> {
  const link = await service.call(`/v1/packs/${pack}/links`, { method: 'POST', body: { audience: 'owner' } });
  return new URL((await link.json<{ url: string }>()).url).pathname;
}

const pageAt = async ({ call }: TestService, path: string) => (await call(path, { key: '' })).text();

const verdictOn = async ({ call }: TestService, { pdfSha256 }: Pack) =>
  (await call('/v1/verifications', { method: 'POST', key: '', body: { pdfSha256 } })).json();

describe('once the latest pack is withdrawn', () => {
  test('nobody is sent to it: the pack before says that no release stands', async () => {
    const service = await testService();
    const first = await sealed(service, 'v1', 'first');
    const link = await linkTo(service, first.pack);
    const second = await sealed(service, 'v2', 'second');
    expect(await pageAt(service, link)).toContain('<h1>Superseded</h1>');
    await withdraw(service, second.pack);

    const page = await pageAt(service, link);
    expect(page).toContain('<h1>No release stands</h1>');
    expect(page).toContain('Do not fly on this one');
    expect(page).not.toContain(`link to ${second.pack}`);
    const verdict = await verdictOn(service, first);
    expect(verdict).toMatchObject({ verdict: 'superseded', laterWithdrawn: second.pack });
    expect(verdict).not.toHaveProperty('supersededBy');

    const third = await sealed(service, 'v3', 'third');
    expect(await pageAt(service, link)).toContain(`link to ${third.pack}`);
    expect(await verdictOn(service, first)).toMatchObject({ verdict: 'superseded', supersededBy: third.pack });
  });

  test('an issue before it leads nowhere either', async () => {
    const service = await testService();
    const first = await sealed(service, 'v1', 'first');
    const second = await sealed(service, 'v1', 'amended');
    await withdraw(service, second.pack);
    expect(await verdictOn(service, first)).toMatchObject({ verdict: 'superseded', laterWithdrawn: second.pack });
  });

  test('the same form is not released again, under a key of the request or without: 409 says what to do', async () => {
    const service = await testService();
    await keep(service, RECORD, visit('v1'));
    const again = () => release(service, { 'Idempotency-Key': 'one' }, visit('v1'));
    expect((await again()).status).toBe(201);
    await withdraw(service, 'Q-TST-P1-1');
    for (const response of [await again(), await release(service, {}, visit('v1'))]) {
      expect(response.status).toBe(409);
      expect((await response.json<{ detail: string }>()).detail).toMatch(/was withdrawn .* amend the record/);
    }
    expect(await sealed(service, 'v1', 'amended')).toMatchObject({ pack: 'Q-TST-P1-2' });
  });
});

describe('once an earlier pack is corrected', () => {
  test('the later one says that it was worked out from old figures, until it is issued anew', async () => {
    const service = await testService();
    await sealed(service, 'v1', 'first');
    const later = await sealed(service, 'v2', 'second');
    const link = await linkTo(service, later.pack);
    expect(await pageAt(service, link)).toContain('<h1>Released</h1>');
    const corrected = await sealed(service, 'v1', 'corrected');

    const page = await pageAt(service, link);
    expect(page).toContain('<h1>Worked out from figures that were corrected</h1>');
    expect(page).toContain(corrected.pack);
    expect(await verdictOn(service, later)).toMatchObject({ verdict: 'superseded', corrected: [corrected.pack] });

    const issued = await sealed(service, 'v2', 'second, from the corrected one');
    expect(await pageAt(service, link)).toContain('<h1>Released</h1>');
    expect(await verdictOn(service, issued)).toMatchObject({ verdict: 'genuine' });
  });

  test('so it does where the earlier one was withdrawn', async () => {
    const service = await testService();
    const first = await sealed(service, 'v1', 'first');
    const later = await sealed(service, 'v2', 'second');
    await withdraw(service, first.pack);
    expect(await pageAt(service, await linkTo(service, later.pack))).toContain('was withdrawn since');
    expect(await verdictOn(service, later)).toMatchObject({ verdict: 'superseded', corrected: [first.pack] });
  });
});

test('a withdrawal while the clock is back is told as one that came after', async () => {
  const service = await testService();
  const before = await sealed(service, 'v0', 'withdrawn before the others');
  await withdraw(service, before.pack);
  const first = await sealed(service, 'v1', 'first');
  const later = await sealed(service, 'v2', 'second');
  expect(await verdictOn(service, later)).toMatchObject({ verdict: 'genuine' });
  service.clock.at -= 5 * 86_400_000;
  await withdraw(service, first.pack);
  expect(await verdictOn(service, later)).toMatchObject({ verdict: 'superseded', corrected: [first.pack] });
});

describe('the clock of the service', () => {
  test('seals nothing before the last entry of the ledger, and says why', async () => {
    const service = await testService();
    await sealed(service, 'v1', 'first');
    await keep(service, { ...RECORD, note: 'second' }, visit('v2'));
    service.clock.at -= 2 * 86_400_000;
    const refused = await release(service, {}, visit('v2'));
    expect(refused.status).toBe(409);
    expect((await refused.json<{ detail: string }>()).detail).toContain('set it right');
    expect((await (await service.call(`${AIRCRAFT}/packs`)).json<{ items: object[] }>()).items).toHaveLength(1);
    service.clock.at += 2 * 86_400_000;
    expect((await release(service, {}, visit('v2'))).status).toBe(201);
  });

  const DAYS = 86_400_000;

  test.each([
    ['a record', (service: TestService) => keep(service, { ...RECORD, note: 'second' }, visit('v2'))],
    ['a link', (service: TestService) => linkTo(service, 'Q-TST-P1-1')],
    ['a withdrawal', (service: TestService) => withdraw(service, 'Q-TST-P1-1')],
  ])('seals nothing before the latest entry either, where %s came after the clock went back', async (_, act) => {
    const service = await testService();
    await sealed(service, 'v1', 'first');
    service.clock.at -= 5 * DAYS;
    await keep(service, { ...RECORD, note: 'second' }, visit('v2'));
    await act(service);
    service.clock.at += DAYS;
    const refused = await release(service, {}, visit('v2'));
    expect(refused.status).toBe(409);
    expect((await refused.json<{ detail: string }>()).detail).toContain('2026-11-05T12:00:00.000Z');
    service.clock.at += 4 * DAYS;
    expect((await release(service, {}, visit('v2'))).status).toBe(201);
  });
});
