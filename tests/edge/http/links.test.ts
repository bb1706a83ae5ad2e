import { env } from 'cloudflare:workers';
import { describe, expect, test } from 'vitest';
import { keep, RECORD, release, type TestService, testService, textOf } from '../service.ts';

const LINKS = '/v1/packs/Q-TST-P1-1/links';

interface MadeLink {
  link: string;
  url: string;
  expiresAt: string;
}

async function released() {
  const service = await testService();
  await keep(service);
  await release(service);
  return service;
}

const make = ({ call }: TestService, body: object = { audience: 'owner' }, headers: Record<string, string> = {}) =>
  call(LINKS, { method: 'POST', body, headers });

async function made(service: TestService, body?: object): Promise<MadeLink & { path: string }> {
  const link = await (await make(service, body)).json<MadeLink>();
  return { ...link, path: new URL(link.url).pathname };
}

/** As somebody without a key. */
const open = ({ call }: TestService, path: string) => call(path, { key: '' });

describe('POST links', () => {
  test('tells an address of 256 random bits once, and keeps its digest only', async () => {
    const service = await released();
    const link = await made(service, { audience: 'owner', days: 30 });
    expect(link.path).toMatch(/^\/p\/[A-Za-z0-9_-]{43}$/);
    expect(link.expiresAt).toBe('2026-12-05T12:00:00.000Z');
    const list = await (await service.call(LINKS)).text();
    expect(list).toContain(link.link);
    const token = link.path.slice(3);
    expect(list).not.toContain(token);
    const { objects } = await env.BLOBS.list({ prefix: 'links/' });
    expect(objects.some(({ key }) => key.includes(token))).toBe(false);
    expect(JSON.stringify(service.events)).not.toContain(token);
  });

  test('refuses what it does not know, too long a life, and packs that do not exist', async () => {
    const service = await released();
    for (const body of [{}, { audience: 'press' }, { audience: 'owner', days: 0 }, { audience: 'owner', days: 1e6 }])
      expect((await make(service, body)).status).toBe(422);
    const path = '/v1/packs/Q-TST-P9-1/links';
    expect((await service.call(path, { method: 'POST', body: { audience: 'owner' } })).status).toBe(404);
    expect((await service.call(path)).status).toBe(404);
  });

  test('repeated under one Idempotency-Key answers the same link', async () => {
    const service = await released();
    const headers = { 'Idempotency-Key': 'k' };
    const [first, again] = [await make(service, undefined, headers), await make(service, undefined, headers)];
    expect(again.status).toBe(201);
    const link = await first.json<MadeLink>();
    expect(await again.json()).toEqual(link);
    expect((await open(service, new URL(link.url).pathname)).status).toBe(200);
    expect((await make(service, { audience: 'inspector' }, headers)).status).toBe(422);
    expect((await make(service, undefined, { 'Idempotency-Key': 'x'.repeat(256) })).status).toBe(400);
    const { items } = await (await service.call(LINKS)).json<{ items: object[] }>();
    expect(items).toHaveLength(1);
  });
});

describe("GET the owner's page", () => {
  test('says first whether the aircraft is released, by whom and when', async () => {
    const service = await released();
    const { path } = await made(service);
    const response = await open(service, path);
    expect(response.status).toBe(200);
    const html = await response.text();
    const order = [
      'Q-TST',
      '<h1>Released</h1>',
      'jonas',
      '<dd>5\u00a0Nov\u00a02026',
      '<h1>first</h1>',
      'Weighing report',
    ];
    const places = order.map((text) => html.indexOf(text, html.indexOf('<body>')));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places).not.toContain(-1);
    expect(html.replaceAll('<script type="module" src="/assets/owner.js">', '')).not.toContain('<script');
  });

  test('is kept nowhere, tells no address onwards and loads only its own', async () => {
    const service = await released();
    const { headers } = await open(service, (await made(service)).path);
    expect(headers.get('Cache-Control')).toBe('private, no-store');
    expect(headers.get('Referrer-Policy')).toBe('no-referrer');
    expect(headers.get('Content-Security-Policy')).toContain("default-src 'none'; script-src 'self';");
    expect(headers.get('X-Robots-Tag')).toBe('noindex');
  });

  test('that leads nowhere says so in the first language of the reader that there is', async () => {
    const service = await released();
    const told = async (languages: string): Promise<string> => {
      const headers = { 'Accept-Language': languages };
      return (await service.call(`/p/${'A'.repeat(43)}`, { key: '', headers })).text();
    };
    expect(await told('fr-FR, de-DE;q=0.8, en;q=0.5')).toContain('Dieser Link öffnet nichts');
    expect(await told('en-GB, de;q=0.8')).toContain('This link opens nothing');
    expect(await told('xx')).toContain('This link opens nothing');
  });

  test('leads to the PDF and to each document', async () => {
    const service = await released();
    const { path } = await made(service);
    const pdf = await open(service, `${path}/pack.pdf`);
    expect(await textOf(pdf)).toContain('%PDF Q-TST-P1-1');
    expect(pdf.headers.get('Cache-Control')).toBe('private, no-store');
    const document = await open(service, `${path}/documents/weighing-report`);
    expect(await document.text()).toContain('Q-TST-P1-1: Released');
    expect((await open(service, `${path}/documents/none`)).status).toBe(404);
  });

  test('gives the PDF in parts, its head alone, and a name to save it under', async () => {
    const service = await released();
    const { path } = await made(service);
    const part = await service.call(`${path}/pack.pdf`, { key: '', headers: { Range: 'bytes=0-4' } });
    expect(part.status).toBe(206);
    expect(await textOf(part)).toBe('%PDF ');
    const head = await service.call(`${path}/pack.pdf`, { key: '', method: 'HEAD' });
    expect(head.status).toBe(200);
    expect(head.headers.get('Content-Length')).toBe(part.headers.get('Content-Range')?.split('/')[1]);
    expect(head.headers.get('Content-Disposition')).toContain('Q-TST-P1-1-release-pack.pdf');
    expect(await textOf(head)).toBe('');
  });

  test('follows to the newest issue and says what it replaces', async () => {
    const service = await released();
    const { path } = await made(service);
    await keep(service, { ...RECORD, note: 'corrected' });
    expect(await (await open(service, path)).text()).toContain('<h1>first</h1>');
    await release(service);
    const html = await (await open(service, path)).text();
    expect(html).toContain('<h1>corrected</h1>');
    expect(html).toContain('It replaces Q-TST-P1-1');
    expect(await textOf(await open(service, `${path}/pack.pdf`))).toContain('Q-TST-P1-2');
  });

  test('says superseded when a later visit was released', async () => {
    const service = await released();
    const { path } = await made(service);
    const later = '/v1/aircraft/Q-TST/visits/v2';
    await keep(service, { ...RECORD, note: 'later' }, later);
    await release(service, {}, later);
    const html = await (await open(service, path)).text();
    expect(html).toContain('<h1>Superseded</h1>');
    expect(html).toContain('Q-TST-P2-1');
    expect(await (await open(service, `${path}/documents/weighing-report`)).text()).toContain('Superseded');
    // What was released is read as a document, and not as what holds now.
    expect(html).not.toContain('class="document leading"');
    expect(html.indexOf('<h1>first</h1>')).toBeGreaterThan(html.indexOf('no longer holds'));
  });

  test('says that a date has passed, from the day after', async () => {
    const due = {
      id: 'L02',
      kind: 'due',
      what: 'Oil and filter',
      limit: '19 Feb 2027',
      date: '2027-02-19',
      hours: undefined,
      meter: undefined,
      landings: undefined,
      of: 'airframe',
      hoursLeft: undefined,
      isOverdue: false,
    } as const;
    const service = await testService({ pipeline: { nextDue: () => [due] } });
    await keep(service);
    await release(service);
    const { path } = await made(service);
    const told = async (at: string): Promise<string> => {
      service.clock.at = Date.parse(at);
      return (await open(service, path)).text();
    };
    expect(await told('2027-02-19T20:00:00Z')).not.toContain('has passed');
    expect(await told('2027-02-20T08:00:00Z')).toContain('Its limit has passed: Oil and filter, 19 Feb 2027.');
    const waits = { ...due, hours: 1304.9, hoursLeft: 20, dueAfter: 'all' } as const;
    const patient = await testService({ pipeline: { nextDue: () => [waits] } });
    await keep(patient);
    await release(patient);
    patient.clock.at = Date.parse('2027-02-20T08:00:00Z');
    expect(await (await open(patient, (await made(patient)).path)).text()).not.toContain('has passed');
  });

  test('says of a weighing that was released alone neither that the aircraft is, nor until when', async () => {
    const service = await testService({ pipeline: { isOfWeighingAlone: () => true } });
    await keep(service);
    await release(service);
    const html = await (await open(service, (await made(service)).path)).text();
    expect(html).toContain('The weighing was released, and nothing else.');
    expect(html).not.toContain('<dt>Until</dt>');
  });

  test('does not let text of the record become markup', async () => {
    const service = await testService();
    await keep(service);
    const body = { by: '<b>jonas', knowsOfNoHazard: true };
    const headers = {
      'If-Match': (await service.call('/v1/aircraft/Q-TST/visits/v1/assessment')).headers.get('ETag') ?? '',
    };
    await service.call('/v1/aircraft/Q-TST/visits/v1/release', { method: 'POST', body, headers });
    const html = await (await open(service, (await made(service)).path)).text();
    expect(html).toContain('&lt;b&gt;jonas');
  });

  test('looks alike for a wrong, an expired and a revoked token', async () => {
    const service = await released();
    const expired = await made(service, { audience: 'owner', days: 1 });
    const revoked = await made(service, { audience: 'owner', days: 300 });
    expect((await service.call(`${LINKS}/${revoked.link}`, { method: 'DELETE' })).status).toBe(204);
    service.clock.at += 86_400_000;
    const paths = [expired.path, revoked.path, `/p/${'A'.repeat(43)}`, '/p/short'];
    for (const rest of ['', '/pack.pdf', '/documents/owner-summary']) {
      const answers = await Promise.all(paths.map((path) => open(service, `${path}${rest}`)));
      expect(answers.map(({ status }) => status)).toEqual([404, 404, 404, 404]);
      const shown = await Promise.all(
        answers.map(async (answer) => JSON.stringify([[...answer.headers], await answer.text()])),
      );
      expect(new Set(shown).size).toBe(1);
    }
  });
});

describe('DELETE link', () => {
  test('can be repeated, and answers 404 for a link of another pack', async () => {
    const service = await released();
    const { link } = await made(service);
    for (const status of [204, 204])
      expect((await service.call(`${LINKS}/${link}`, { method: 'DELETE' })).status).toBe(status);
    expect((await service.call(`${LINKS}/none`, { method: 'DELETE' })).status).toBe(404);
    const other = '/v1/aircraft/Q-TST/visits/v2';
    await keep(service, { ...RECORD, note: 'later' }, other);
    await release(service, {}, other);
    const elsewhere = `/v1/packs/Q-TST-P2-1/links/${link}`;
    expect((await service.call(elsewhere, { method: 'DELETE' })).status).toBe(404);
  });
});
