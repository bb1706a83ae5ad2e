import { env } from 'cloudflare:workers';
import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../worker/core/limits.ts';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import type { InspectedAttachment } from '../../../worker/core/print/index.ts';
import { pipelineDouble } from '../pipeline-double.ts';
import { keep, RECORD, testService, VISIT } from '../service.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const PAPER = bytes('%PDF invented');

const FACT = {
  ok: true,
  kind: 'pdf',
  pages: 1,
  obstacles: [],
  work: { unpackedBytes: 0, objects: 0, tokens: 0 },
  bytes: 13,
  inspection: 4,
};

const handIn = (service: Awaited<ReturnType<typeof testService>>, name: string, body: Uint8Array = PAPER) =>
  service.call(`/v1/attachments/${name}`, { method: 'PUT', body });

describe('PUT /v1/attachments/{sha256}', () => {
  test('keeps a file under its digest, once', async () => {
    const service = await testService();
    const name = await sha256(PAPER);
    const first = await handIn(service, name);
    expect(first.status).toBe(201);
    expect(await first.json()).toEqual({ sha256: name, ...FACT });
    expect((await handIn(service, name)).status).toBe(200);
    expect((await service.call(`/v1/attachments/${name}`)).status).toBe(200);
  });

  test('refuses bytes of another digest, and keeps nothing of them', async () => {
    const service = await testService();
    const name = await sha256(bytes('something else'));
    const response = await handIn(service, name);
    expect(response.status).toBe(422);
    expect(await response.json()).toMatchObject({ type: '/problems/digest-differs' });
    expect((await service.call(`/v1/attachments/${name}`)).status).toBe(404);
  });

  test('refuses what cannot go into a pack, and remembers why', async () => {
    const inspectAttachment = async () => ({ ok: false, refusal: 'encrypted', detail: { id: 'encrypted' } }) as const;
    const service = await testService({ pipeline: { inspectAttachment } });
    const name = await sha256(PAPER);
    const response = await handIn(service, name);
    expect(response.status).toBe(422);
    expect((await response.json<{ detail: string }>()).detail).toContain('it is encrypted');
    const known = await service.call(`/v1/attachments/${name}`);
    expect(await known.json()).toMatchObject({ ok: false, refusal: 'encrypted' });
  });

  test('refuses what is too large and what is no digest', async () => {
    const service = await testService();
    expect((await handIn(service, 'a'.repeat(64), new Uint8Array(LIMITS.annexBytes + 1))).status).toBe(413);
    expect((await handIn(service, 'A'.repeat(64))).status).toBe(400);
  });

  test('tells another workshop nothing', async () => {
    const [ours, theirs] = [await testService(), await testService()];
    const name = await sha256(PAPER);
    await handIn(ours, name);
    expect((await theirs.call(`/v1/attachments/${name}`)).status).toBe(404);
  });
});

test('an assessment is given what is known of the files that the record names', async () => {
  const seen: unknown[] = [];
  const service = await testService();
  const name = await sha256(PAPER);
  await handIn(service, name);
  const watched = await testService({
    pipeline: {
      assess: (input, at, facts) => {
        seen.push(facts?.attachments);
        return pipelineDouble.assess(input, at, facts);
      },
    },
  });
  await handIn(watched, name);
  await keep(watched, { ...RECORD, attachments: [{ sha256: name }, { sha256: 'b'.repeat(64) }, null, 7] } as never);
  expect(seen).toEqual([{ [name]: FACT }]);
  expect((await watched.call(`${VISIT}/assessment`)).status).toBe(200);
});

describe('a file that an earlier inspection let pass', () => {
  const name = sha256(PAPER);
  const record = async () => ({ ...RECORD, attachments: [{ sha256: await name }] }) as never;

  /** A workshop with the file in it, as a deployment of before left it. */
  async function earlier(again: () => Promise<InspectedAttachment>) {
    const looked: Uint8Array[] = [];
    const seen: unknown[] = [];
    const service = await testService({
      pipeline: {
        inspectAttachment: (given) => {
          looked.push(given);
          return again();
        },
        assess: (input, at, facts) => {
          seen.push(facts?.attachments);
          return pipelineDouble.assess(input, at, facts);
        },
      },
    });
    const { inspection: _, work: __, ...fact } = FACT;
    await env.BLOBS.put(`attachments/${service.workshop}/${await name}`, PAPER, {
      customMetadata: { fact: JSON.stringify(fact) },
    });
    return { service, looked, seen };
  }

  test('is looked into again, once, before it is assessed', async () => {
    const { service, looked, seen } = await earlier(() => pipelineDouble.inspectAttachment(PAPER));
    await keep(service, await record());
    expect(looked).toHaveLength(1);
    expect(seen.at(-1)).toEqual({ [await name]: FACT });
    await service.call(`${VISIT}/assessment`);
    expect(looked).toHaveLength(1);
  });

  test('is left out where it does not pass any more, and stays', async () => {
    const refused = { ok: false, refusal: 'too-large', detail: { id: 'holds-more-objects-than-paper-needs' } } as const;
    const { service, seen } = await earlier(async () => refused);
    await keep(service, await record());
    expect(seen.at(-1)).toEqual({ [await name]: refused });
    expect((await handIn(service, await name)).status).toBe(422);
    const file = await service.call(`/v1/attachments/${await name}/file`);
    expect(new Uint8Array(await file.arrayBuffer())).toEqual(PAPER);
  });
});
