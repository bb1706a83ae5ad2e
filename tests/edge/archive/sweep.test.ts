import { env } from 'cloudflare:workers';
import { expect, test } from 'vitest';
import { LIMITS } from '../../../worker/core/limits.ts';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { sweepHandedIn } from '../../../worker/edge/archive/sweep.ts';
import { keep, RECORD, testService, VISIT } from '../service.ts';

const DAY_MS = 86_400_000;
const PAPER = new TextEncoder().encode('%PDF to be swept');

const later = (days: number): Date => new Date(Date.now() + days * DAY_MS);

test('sweepHandedIn() clears what was handed in long ago, and nothing else', async () => {
  const service = await testService();
  const name = await sha256(PAPER);
  await service.call(`/v1/attachments/${name}`, { method: 'PUT', body: PAPER });
  await env.BLOBS.put('sha256/a-blob-of-a-pack', 'kept');
  await env.BLOBS.put('staged/a-workshop/Q-TST/a-blob', 'brought');
  await sweepHandedIn(env.BLOBS, later(LIMITS.handedInDays - 1));
  expect((await service.call(`/v1/attachments/${name}`)).status).toBe(200);
  expect(await env.BLOBS.head('staged/a-workshop/Q-TST/a-blob')).not.toBeNull();
  expect(await sweepHandedIn(env.BLOBS, later(LIMITS.handedInDays + 1))).toBeGreaterThan(0);
  expect((await service.call(`/v1/attachments/${name}`)).status).toBe(404);
  expect(await env.BLOBS.head('staged/a-workshop/Q-TST/a-blob')).toBeNull();
  expect(await env.BLOBS.head('sha256/a-blob-of-a-pack')).not.toBeNull();
});

test('a release whose file is swept while it runs is refused, and nothing is sealed', async () => {
  const name = await sha256(PAPER);
  const { pipelineDouble } = await import('../pipeline-double.ts');
  const fact = { ok: true, kind: 'pdf', pages: 1, obstacles: [], bytes: PAPER.length } as const;
  const service = await testService({
    pipeline: {
      async assess(input, at, facts) {
        const outcome = await pipelineDouble.assess(input, at, facts);
        return outcome.ok ? { ok: true, assessed: { ...outcome.assessed, attachments: { [name]: fact } } } : outcome;
      },
    },
  });
  await keep(service, RECORD);
  const assessment = await service.call(`${VISIT}/assessment`);
  const released = await service.call(`${VISIT}/release`, {
    method: 'POST',
    body: { by: 'jonas', knowsOfNoHazard: true },
    headers: { 'If-Match': assessment.headers.get('ETag') ?? '' },
  });
  expect(released.status).toBe(409);
  expect((await (await service.call('/v1/aircraft/Q-TST')).json<{ packs: number }>()).packs).toBe(0);
});
