import { env } from 'cloudflare:workers';
import { describe, expect, test } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { archiveFailingOn } from '../failing-bucket.ts';
import { pipelineDouble } from '../pipeline-double.ts';
import { keep, RECORD, release, testService, VISIT } from '../service.ts';

interface Released {
  pack: string;
  supersedes: string | null;
  previous: string | null;
  pdfSha256: string;
}

const ATTESTATION = { by: 'jonas', knowsOfNoHazard: true };

describe('POST release', () => {
  test('seals the pack over the assessment that was read', async () => {
    const service = await testService();
    await keep(service);
    const response = await release(service);
    expect(response.status).toBe(201);
    expect(response.headers.get('Location')).toBe('/v1/packs/Q-TST-P1-1');
    expect(await response.json()).toMatchObject({
      pack: 'Q-TST-P1-1',
      releasedBy: 'jonas',
      supersedes: null,
      supersededBy: null,
      issuedAt: '2026-11-05T12:00:00.000Z',
    });
    const key = (await sha256(service.key)).slice(0, 16);
    expect(service.events).toContainEqual({ code: 'RELEASE_SEALED', pack: 'Q-TST-P1-1', issue: 1, key });
    const { items } = await (await service.call('/v1/aircraft/Q-TST/visits')).json<{ items: object[] }>();
    expect(items).toMatchObject([{ visit: 'v1', state: 'released', pack: 'Q-TST-P1-1' }]);
  });

  test('asks for If-Match, for the present assessment, and for a visit', async () => {
    const service = await testService();
    const post = { method: 'POST', body: ATTESTATION };
    expect((await service.call(`${VISIT}/release`, post)).status).toBe(404);
    const visitTag = (await keep(service)).headers.get('ETag') ?? '';
    expect((await service.call(`${VISIT}/release`, post)).status).toBe(428);
    const wrong = await service.call(`${VISIT}/release`, { ...post, headers: { 'If-Match': visitTag } });
    expect(wrong.status).toBe(412);
  });

  test('is refused when the record moved after it was read', async () => {
    const service = await testService();
    await keep(service);
    const read = (await service.call(`${VISIT}/assessment`)).headers.get('ETag') ?? '';
    await keep(service, { ...RECORD, note: 'amended' });
    const headers = { 'If-Match': read };
    const response = await service.call(`${VISIT}/release`, { method: 'POST', body: ATTESTATION, headers });
    expect(response.status).toBe(412);
    expect(response.headers.get('ETag')).toBe((await service.call(`${VISIT}/assessment`)).headers.get('ETag'));
    expect(await (await service.call('/v1/aircraft/Q-TST/packs')).json()).toEqual({ items: [] });
  });

  test('is refused when the record moves while the pack is being sealed', async () => {
    let isAmended = false;
    const service = await testService({
      pipeline: {
        async seal(...given) {
          if (!isAmended) {
            isAmended = true;
            await keep(service, { ...RECORD, note: 'amended' });
          }
          return pipelineDouble.seal(...given);
        },
      },
    });
    await keep(service);
    expect((await release(service)).status).toBe(412);
    expect(await (await service.call('/v1/aircraft/Q-TST/packs')).json()).toEqual({ items: [] });
  });

  test('takes the next place when another visit is released meanwhile', async () => {
    const other = '/v1/aircraft/Q-TST/visits/v2';
    let isReleased = false;
    const service = await testService({
      pipeline: {
        async seal(...given) {
          if (!isReleased) {
            isReleased = true;
            await release(service, {}, other);
          }
          return pipelineDouble.seal(...given);
        },
      },
    });
    await keep(service);
    await keep(service, { ...RECORD, note: 'other' }, other);
    const response = await release(service);
    expect(response.status).toBe(201);
    expect(await response.json()).toMatchObject({ pack: 'Q-TST-P2-1', previous: 'Q-TST-P1-1' });
  });

  test('is blocked with every finding, and without the statement', async () => {
    const service = await testService();
    await keep(service, { ...RECORD, isBlocked: true });
    const response = await release(service);
    expect(response.status).toBe(409);
    expect(await response.json()).toMatchObject({
      type: '/problems/release-blocked',
      findings: [{ code: 'TEST_BLOCKS' }],
    });
    for (const body of [{ ...ATTESTATION, knowsOfNoHazard: 'yes' }, { by: 'jonas' }, { ...ATTESTATION, extra: 1 }])
      expect((await service.call(`${VISIT}/release`, { method: 'POST', body })).status).toBe(422);
  });

  test('repeated over the same form answers the same pack', async () => {
    const service = await testService();
    await keep(service);
    const first = await (await release(service)).json<Released>();
    service.clock.at += 60_000;
    const again = await release(service);
    expect(again.status).toBe(200);
    expect(await again.json()).toEqual(first);
  });

  test('sent twice at once makes one pack', async () => {
    const service = await testService();
    await keep(service);
    const answers = await Promise.all([release(service), release(service), release(service)]);
    const packs = await Promise.all(answers.map((answer) => answer.json<Released>()));
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 200, 201]);
    expect(new Set(packs.map(({ pdfSha256 }) => pdfSha256)).size).toBe(1);
  });

  test('of an amended visit makes the next issue and leaves the first as it was', async () => {
    const service = await testService();
    await keep(service);
    const first = await (await release(service)).json<Released>();
    const before = await (await service.call('/v1/packs/Q-TST-P1-1/record.json')).bytes();
    await keep(service, { ...RECORD, note: 'corrected' });
    const second = await (await release(service)).json<Released>();
    expect(second).toMatchObject({ pack: 'Q-TST-P1-2', supersedes: 'Q-TST-P1-1', previous: 'Q-TST-P1-1' });
    const kept = await (await service.call('/v1/packs/Q-TST-P1-1')).json();
    expect(kept).toEqual({ ...first, supersededBy: 'Q-TST-P1-2' });
    expect(await (await service.call('/v1/packs/Q-TST-P1-1/record.json')).bytes()).toEqual(before);
  });

  test('tells the gate of the pack that stood before the visit, also when an old visit is corrected', async () => {
    const seen: (string | undefined)[] = [];
    const service = await testService({
      pipeline: {
        assess(input, at, facts) {
          seen.push(facts?.lastPack?.pack);
          return pipelineDouble.assess(input, at, facts);
        },
      },
    });
    const second = '/v1/aircraft/Q-TST/visits/v2';
    await keep(service);
    await release(service);
    await keep(service, { ...RECORD, note: 'other' }, second);
    await release(service, {}, second);
    seen.length = 0;
    await service.call(`${VISIT}/assessment`);
    await service.call(`${second}/assessment`);
    // The standing file of the newest pack is read in between.
    expect([seen.at(0), seen.at(-1)]).toEqual([undefined, 'Q-TST-P1-1']);
  });
});

describe('Idempotency-Key of a release', () => {
  const headers = { 'Idempotency-Key': 'k-1' };

  test('gives the same answer even after the visit moved on', async () => {
    const service = await testService();
    await keep(service);
    const first = await release(service, headers);
    await keep(service, { ...RECORD, note: 'later' });
    const again = await release(service, headers);
    expect([first.status, again.status]).toEqual([201, 201]);
    expect(await again.json()).toEqual(await first.json());
  });

  test('is remembered where the visit was released before, and no pack was made', async () => {
    const service = await testService();
    await keep(service);
    await release(service);
    const first = await release(service, headers);
    await keep(service, { ...RECORD, note: 'later' });
    const again = await release(service, headers);
    expect([first.status, again.status]).toEqual([200, 200]);
    expect(await again.json()).toEqual(await first.json());
    const body = { by: 'mila', knowsOfNoHazard: true };
    expect((await service.call(`${VISIT}/release`, { method: 'POST', body, headers })).status).toBe(422);
  });

  test('is refused for another request', async () => {
    const service = await testService();
    await keep(service);
    await release(service, headers);
    const body = { by: 'mila', knowsOfNoHazard: true };
    const response = await service.call(`${VISIT}/release`, { method: 'POST', body, headers });
    expect(response.status).toBe(422);
    expect(await response.json()).toMatchObject({ type: '/problems/idempotency-key-reused' });
  });
});

test('two releases at once under one Idempotency-Key: one is sealed, the other refused', async () => {
  const service = await testService();
  const other = '/v1/aircraft/Q-TST/visits/v2';
  await keep(service);
  await keep(service, { ...RECORD, note: 'other' }, other);
  const headers = { 'Idempotency-Key': 'same' };
  const answers = await Promise.all([release(service, headers), release(service, headers, other)]);
  expect(answers.map(({ status }) => status).sort()).toEqual([201, 422]);
});

describe('release while the bucket fails', () => {
  test('answers 503, makes no pack, and can be repeated', async () => {
    let isDown = true;
    const archive = archiveFailingOn('put', () => isDown);
    const service = await testService({ world: { archive } });
    await keep(service);
    const response = await release(service);
    expect(response.status).toBe(503);
    expect(response.headers.get('Retry-After')).toMatch(/^\d+$/);
    expect(await response.text()).not.toContain('bucket unreachable');
    expect(service.events).toContainEqual({ code: 'ARCHIVE_UNAVAILABLE', cause: 'bucket unreachable' });
    expect(await (await service.call('/v1/aircraft/Q-TST/packs')).json()).toEqual({ items: [] });
    isDown = false;
    expect((await release(service)).status).toBe(201);
  });

  test('at every single write leaves no pack or a whole one', async () => {
    for (let failing = 0; failing < 6; failing++) {
      let writes = 0;
      const archive = archiveFailingOn('put', () => writes++ === failing);
      const service = await testService({ world: { archive } });
      await keep(service);
      const { status } = await release(service);
      const { items } = await (await service.call('/v1/aircraft/Q-TST/packs')).json<{ items: Released[] }>();
      expect(items.length).toBe(status === 201 ? 1 : 0);
      for (const { pdfSha256 } of items) expect(await env.BLOBS.head(`sha256/${pdfSha256}`)).not.toBeNull();
    }
  });
});
