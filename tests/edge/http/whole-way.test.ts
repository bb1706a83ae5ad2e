import type { JSONWebKeySet } from 'jose';
import { describe, expect, test } from 'vitest';
import computedOnly from '../../../fixtures/visits/computed-only.json' with { type: 'json' };
import full from '../../../fixtures/visits/nose-wheel-full.json' with { type: 'json' };
import weighingOnly from '../../../fixtures/visits/weighing-only.json' with { type: 'json' };
import * as pipeline from '../../../worker/core/core.ts';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { verifyFile } from '../../../worker/core/seal/verify.ts';
import { testService } from '../service.ts';

const VISIT = '/v1/aircraft/Q-SLM/visits/nose-wheel';

interface Finding {
  code: string;
  pointer: string;
}

interface DueList {
  comingDue: { id: string; kind: string }[];
  items: { id: string; daysLeft?: number }[];
  deferred: object[];
}

const findingsIn = async (response: Response) => (await response.json<{ findings: Finding[] }>()).findings;

/** Files are handed in by tests of their own. */
const { attachments: _, ...record } = full;

const released = { by: record.release.by, knowsOfNoHazard: true };

describe('the whole way with the real stages', () => {
  test('a visit goes in, and a sealed pack and its link come out', async () => {
    const { call, clock, workshop } = await testService({ pipeline });
    clock.at = Date.parse(record.visit.workEndedAt) + 3_600_000;
    const put = await call(VISIT, { method: 'PUT', body: record });
    expect(put.status).toBe(201);
    const assessment = await call(`${VISIT}/assessment`);
    const headers = { 'If-Match': assessment.headers.get('ETag') ?? '' };
    const sealed = await call(`${VISIT}/release`, { method: 'POST', body: released, headers });
    expect(sealed.status).toBe(201);
    const pack = await sealed.json<{ pack: string; recordSha256: string; manifestSha256: string }>();
    expect(`"${pack.recordSha256}"`).toBe(put.headers.get('ETag'));
    const pdf = await (await call(`/v1/packs/${pack.pack}/pack.pdf`)).bytes();
    expect(new TextDecoder().decode(pdf.slice(0, 5))).toBe('%PDF-');
    const keys = await (await call(`/v1/workshops/${workshop}/keys.json`, { key: '' })).json<JSONWebKeySet>();
    const claims = { pack: pack.pack, workshop, recordSha256: pack.recordSha256, manifestSha256: pack.manifestSha256 };
    const verdict = await verifyFile(pdf, keys);
    expect(verdict).toMatchObject({ kind: 'genuine', claims });
    if (verdict.kind !== 'genuine') return;
    const [, start = 0, end = 0] = verdict.claims.parts.find(([name]) => name === 'page 1') ?? [];
    const altered = pdf.slice();
    const middle = Math.floor((start + end) / 2);
    altered[middle] = (altered[middle] ?? 0) ^ 1;
    expect(await verifyFile(altered, keys)).toMatchObject({ kind: 'altered', parts: ['page 1'] });
    const manifest = await (await call(`/v1/packs/${pack.pack}/manifest.json`)).text();
    expect(await sha256(manifest)).toBe(pack.manifestSha256);
    expect(manifest).toContain(pack.recordSha256);
    const link = await call(`/v1/packs/${pack.pack}/links`, { method: 'POST', body: { audience: 'owner' } });
    const { pathname } = new URL((await link.json<{ url: string }>()).url);
    const page = await (await call(pathname, { key: '' })).text();
    expect(page).toContain('<article id="owner-summary"');
    expect(page).not.toContain(' style=');
    expect(page).toContain('id="loading-facts"');
    const due = await (await call('/v1/aircraft/Q-SLM/due')).json<DueList>();
    expect(due.items[0]).toMatchObject({ id: 'L02', isOverdue: false });
    expect(due.deferred).toEqual([expect.objectContaining({ id: 'F4', untilHours: 1230 })]);
    const kinds = due.comingDue.map(({ id, kind }) => [id, kind]);
    expect(kinds).toEqual(
      expect.arrayContaining([
        ['L02', 'due'],
        ['F4', 'deferral'],
        ['F6', 'watch'],
        ['D2-SB-016', 'bulletin'],
      ]),
    );
    clock.at += 30 * 86_400_000;
    const later = await (await call('/v1/aircraft/Q-SLM/due')).json<DueList>();
    expect(later.items[0]?.daysLeft).toBe((due.items[0]?.daysLeft ?? 0) - 30);
    const baseline = await (await call(`/v1/packs/${pack.pack}/baseline.json`)).json<object>();
    expect(baseline).toMatchObject({ source: 'previous-pack', reference: pack.pack });
    expect(await (await call(`${pathname}/baseline.json`, { key: '' })).json()).toEqual(baseline);
    expect((await call(`/p/${'A'.repeat(43)}/baseline.json`, { key: '' })).status).toBe(404);
    const documents = [...page.matchAll(/href="([^"]+\/documents\/[^"]+)"/g)].map(([, href = '']) => href);
    expect(documents.length).toBeGreaterThan(8);
    for (const href of documents) expect((await call(href, { key: '' })).status, href).toBe(200);
  });

  test('a visit of a workshop that writes German has a German page', async () => {
    const { call, clock } = await testService({ pipeline });
    clock.at = Date.parse('2026-11-30T12:00:00Z');
    const german = { ...weighingOnly, workshop: { ...weighingOnly.workshop, language: 'de' } };
    const path = `/v1/aircraft/${german.aircraft.registration}/visits/german`;
    await call(path, { method: 'PUT', body: german });
    const headers = { 'If-Match': (await call(`${path}/assessment`)).headers.get('ETag') ?? '' };
    const body = { by: german.release.by, knowsOfNoHazard: true };
    const { pack } = await (await call(`${path}/release`, { method: 'POST', body, headers })).json<{ pack: string }>();
    const link = await call(`/v1/packs/${pack}/links`, { method: 'POST', body: { audience: 'owner' } });
    const { pathname } = new URL((await link.json<{ url: string }>()).url);
    const page = await (await call(pathname, { key: '' })).text();
    expect(page).toContain('<html lang="de">');
    for (const text of ['<h1>Freigegeben</h1>', 'Darf ich fliegen?', 'Alles in der Mappe', '30.11.2026, 07:00'])
      expect(page).toContain(text);
    expect(page).not.toMatch(/Released|Weighing report|This link works/);
    const document = await (await call(`${pathname}/documents/weighing-report`, { key: '' })).text();
    expect(document).toContain('<html lang="de">');
    expect(document).toContain('Zurück zur Übersicht');
  });

  test.each([
    ['weighing-only', weighingOnly],
    ['computed-only', computedOnly],
  ])('the small visit %s is released too', async (visit, small) => {
    const { call, clock } = await testService({ pipeline });
    // The evening of the day of arrival.
    clock.at = Date.parse(small.visit.arrivedAt) + 8 * 3_600_000;
    const path = `/v1/aircraft/${small.aircraft.registration}/visits/${visit}`;
    await call(path, { method: 'PUT', body: small });
    const headers = { 'If-Match': (await call(`${path}/assessment`)).headers.get('ETag') ?? '' };
    const body = { by: small.release.by, knowsOfNoHazard: true };
    const sealed = await call(`${path}/release`, { method: 'POST', body, headers });
    expect(sealed.status, await sealed.clone().text()).toBe(201);
  });

  test('the hazard statement is the gate’s own condition', async () => {
    const { call } = await testService({ pipeline });
    await call(VISIT, { method: 'PUT', body: record });
    const headers = { 'If-Match': (await call(`${VISIT}/assessment`)).headers.get('ETag') ?? '' };
    const body = { ...released, knowsOfNoHazard: false };
    const response = await call(`${VISIT}/release`, { method: 'POST', body, headers });
    expect(response.status).toBe(409);
    expect((await findingsIn(response)).map(({ code }) => code)).toContain('HAZARD_NOT_DENIED');
  });

  test('an unknown key is refused with its pointer, and a near one is named', async () => {
    const { call } = await testService({ pipeline });
    const body = { ...record, aircraft: { ...record.aircraft, regstration: 'Q-SLM' } };
    const response = await call(VISIT, { method: 'PUT', body });
    expect(response.status).toBe(422);
    expect(await findingsIn(response)).toMatchObject([
      { code: 'RECORD_KEY_UNKNOWN', pointer: '/aircraft/regstration' },
    ]);
  });

  test('nothing that a client sends makes the service fail', async () => {
    const { call, events } = await testService({ pipeline });
    const parts = Object.keys(record);
    const strange: unknown[] = [null, 0, -1, 1e308, '', 'x', [], {}, [null], [[]], { a: 1 }, true];
    for (const part of parts)
      for (const value of strange) {
        const response = await call('/v1/assessments', { method: 'POST', body: { ...record, [part]: value } });
        expect([200, 422], `${part} ${JSON.stringify(value)}`).toContain(response.status);
      }
    expect(events.filter(({ code }) => code === 'UNEXPECTED_FAILURE')).toEqual([]);
  });

  test('a draft comes as PDF and as HTML, marked', async () => {
    const { call } = await testService({ pipeline });
    await call(VISIT, { method: 'PUT', body: record });
    const html = await (await call(`${VISIT}/documents/weighing-report`)).text();
    const all = await call(`${VISIT}/documents.json`);
    const { items, assessmentSha256 } = await all.json<{
      items: { id: string; html: string }[];
      assessmentSha256: string;
    }>();
    expect(all.headers.get('ETag')).toBe(`"${assessmentSha256}"`);
    expect(items.find(({ id }) => id === 'weighing-report')?.html).toContain('NOT RELEASED');
    expect(html).toContain('Not released');
    const pdf = await call(`${VISIT}/pack.pdf?paper=Letter`);
    expect(new TextDecoder().decode((await pdf.bytes()).slice(0, 5))).toBe('%PDF-');
  });
});
