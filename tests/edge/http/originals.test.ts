import { describe, expect, test } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { pipelineDouble } from '../pipeline-double.ts';
import { keep, RECORD, release, testService } from '../service.ts';

const PAPER = new TextEncoder().encode('%PDF a paper with everything in it');

/** A released visit whose record names a paper that was handed in, and one that was not. */
async function releasedWithPaper() {
  const digest = await sha256(PAPER);
  const service = await testService({
    pipeline: {
      // What the stages make of a record that names a file: the double has no attachments of its own.
      async assess(input, at, facts) {
        const outcome = await pipelineDouble.assess(input, at, facts);
        if (outcome.ok) Object.assign(outcome.assessed, { attachments: facts?.attachments ?? {} });
        return outcome;
      },
    },
  });
  await service.call(`/v1/attachments/${digest}`, { method: 'PUT', body: PAPER });
  const record = { ...RECORD, attachments: [{ sha256: digest }, { sha256: 'f'.repeat(64) }] };
  await keep(service, record);
  expect((await release(service)).status).toBe(201);
  return { service, digest };
}

describe('GET /v1/packs/{pack}/attachments/{sha256}', () => {
  test('gives the file as it came, to be saved and not to be kept by caches', async () => {
    const { service, digest } = await releasedWithPaper();
    const response = await service.call(`/v1/packs/Q-TST-P1-1/attachments/${digest}`);
    expect(response.headers.get('Content-Disposition')).toBe('attachment');
    expect(response.headers.get('Cache-Control')).toContain('no-store');
    expect(await response.bytes()).toEqual(PAPER);
    const handedIn = await service.call(`/v1/attachments/${digest}/file`);
    expect(await handedIn.bytes()).toEqual(PAPER);
  });

  test('gives only what the record of the pack names: other blobs are not found', async () => {
    const { service } = await releasedWithPaper();
    const pack = await (await service.call('/v1/packs/Q-TST-P1-1')).json<{ pdfSha256: string }>();
    for (const digest of [pack.pdfSha256, 'f'.repeat(64)])
      expect((await service.call(`/v1/packs/Q-TST-P1-1/attachments/${digest}`)).status).toBe(404);
    expect((await service.call('/v1/packs/Q-TST-P1-1/attachments/x')).status).toBe(400);
  });

  test('gives another workshop nothing', async () => {
    const { digest } = await releasedWithPaper();
    const stranger = await testService();
    for (const path of [`/v1/packs/Q-TST-P1-1/attachments/${digest}`, `/v1/attachments/${digest}/file`])
      expect((await stranger.call(path)).status).toBe(404);
  });
});

test('GET /v1/packs/{pack}/documents.json has the digest that the ledger names', async () => {
  const { service } = await releasedWithPaper();
  const documents = await (await service.call('/v1/packs/Q-TST-P1-1/documents.json')).bytes();
  const { items } = await (await service.call('/v1/aircraft/Q-TST/ledger')).json<{ items: { body: string }[] }>();
  expect(items.at(-1)?.body).toContain(await sha256(documents));
});

describe('GET /v1/aircraft', () => {
  test('lists every aircraft that anything was kept of, page by page, and no other workshop’s', async () => {
    const [service, stranger] = [await testService(), await testService()];
    for (const registration of ['Q-BBB', 'Q-AAA', 'Q-CCC'])
      await keep(service, { aircraft: { registration } }, `/v1/aircraft/${registration}/visits/v1`);
    const first = await service.call('/v1/aircraft?limit=2');
    const items = [{ registration: 'Q-AAA' }, { registration: 'Q-BBB' }];
    expect(await first.json()).toEqual({ workshop: service.workshop, items });
    const next = /<([^>]+)>/.exec(first.headers.get('Link') ?? '')?.[1] ?? '';
    expect(await (await service.call(next)).json()).toMatchObject({ items: [{ registration: 'Q-CCC' }] });
    expect(await (await stranger.call('/v1/aircraft')).json()).toEqual({ workshop: stranger.workshop, items: [] });
  });
});
