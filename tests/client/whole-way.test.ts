import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, expectTypeOf, test } from 'vitest';
import { everyItem, type Slipmark, SlipmarkProblem, slipmark, type VisitRecord } from '../../worker/client/client.ts';
import type { VisitRecord as Posted } from '../../worker/core/record/record.ts';
import { bundle } from '../../worker/local/service/bundle.ts';
import { type Embedded, startEmbedded } from '../../worker/local/service/embedded.ts';
import { freePort } from '../../worker/local/service/free-port.ts';
import { redated } from '../../worker/local/service/redated.ts';
import { readFixture } from '../read-fixture.ts';

const storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
const secrets = { adminSecret: 'secret-of-the-client', sealSecret: 'seal-secret-of-the-client' };
const visit = { registration: 'Q-WGT', visit: 'weighing' };
let service: Embedded;
let client: Slipmark;
let record: VisitRecord;

beforeAll(async () => {
  const port = await freePort(19_240);
  service = await startEmbedded({ script: await bundle(), storage, port, ...secrets });
  const { origin } = service;
  const deployment = slipmark({ origin, key: secrets.adminSecret });
  const { body } = await deployment.createWorkshop({ body: { id: 'client', name: 'A workshop' } });
  client = slipmark({ origin, key: body.key.secret });
  record = redated(readFixture('visits/weighing-only') as VisitRecord, new Date());
});

afterAll(async () => {
  await service?.stop();
  rmSync(storage, { recursive: true, force: true });
});

describe('slipmark()', () => {
  test('goes the whole way: keep, assess, release, read the pack, link it, list it', async () => {
    const kept = await client.putVisit({ ...visit, body: record, ifNoneMatch: '*' });
    expect(kept.status).toBe(201);
    const assessment = await client.getAssessment(visit);
    expect(assessment.body.isReleasable).toBe(true);
    expect(assessment.body.results.weighing?.empty.massKg).toBeGreaterThan(100);
    const draft = await client.getDraftDocument({ ...visit, document: 'release-statement', accept: 'application/pdf' });
    expect(new TextDecoder().decode(draft.body.slice(0, 5))).toBe('%PDF-');

    const body = { by: 'rufus', knowsOfNoHazard: true };
    const released = await client.releaseVisit({ ...visit, body, ifMatch: assessment.etag });
    const { pack } = released.body;
    const pdf = await client.getPackPdf({ pack });
    expect(pdf.etag).toContain(released.body.pdfSha256);
    const link = await client.makeLink({ pack, body: { audience: 'owner' } });
    const page = await client.openLink({ token: new URL(link.body.url).pathname.replace('/p/', '') });
    expect(page.body).toContain('Q-WGT');

    const kinds: string[] = [];
    for await (const { kind } of everyItem(client.listLedger, { registration: 'Q-WGT', limit: 1 })) kinds.push(kind);
    expect(kinds).toEqual(['visit-kept', 'pack-sealed', 'link-made']);
  });

  test('tells an amendment that somebody else made in between', async () => {
    const before = await client.getVisit(visit);
    const once = { ...visit, ifMatch: before.etag };
    await client.patchVisit({ ...once, body: { workshop: { name: 'Lower Meadow' } } });
    const late = client.patchVisit({ ...once, body: { workshop: { name: 'Upper Meadow' } } });
    await expect(late).rejects.toMatchObject({ status: 412, type: '/problems/precondition-failed' });
  });

  test('tells everything that is wrong with a record', async () => {
    const body = { ...record, colour: 'red', units: { ...record.units, mass: 'stone' } } as unknown as VisitRecord;
    const error: unknown = await client.assessRecord({ body }).catch((reason: unknown) => reason);
    expect(error).toBeInstanceOf(SlipmarkProblem);
    const { status, findings } = error as SlipmarkProblem;
    expect(status).toBe(422);
    expect(findings.map(({ pointer }) => pointer).sort()).toEqual(['/colour', '/units/mass']);
  });
});

test('the type of the record is that of the schema, and calls refuse what they do not take', () => {
  expectTypeOf<keyof VisitRecord>().toEqualTypeOf<keyof Posted>();
  expectTypeOf<VisitRecord['units']>().toEqualTypeOf<Posted['units']>();
  expectTypeOf<VisitRecord['people']>().toEqualTypeOf<Posted['people']>();
  expectTypeOf(client.getPackPdf).parameter(0).toEqualTypeOf<{ pack: string }>();
  expectTypeOf(client.getPackPdf).returns.resolves.toHaveProperty('body').toEqualTypeOf<Uint8Array>();
  expectTypeOf(client.listKeys).parameter(0).toBeNullable();
  expectTypeOf(client.listPacks).parameter(0).toBeNullable();
  type Verdict = Awaited<ReturnType<Slipmark['verify']>>['body']['verdict'];
  expectTypeOf<Verdict>().toEqualTypeOf<'genuine' | 'superseded' | 'withdrawn' | 'unknown'>();
});
