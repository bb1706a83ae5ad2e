import { env } from 'cloudflare:workers';
import { describe, expect, test } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { CloudArchive } from '../../../worker/edge/archive/cloud-archive.ts';
import { brokenEntry } from '../../../worker/edge/archive/ledger/chain.ts';
import type { ChainEntry } from '../../../worker/edge/archive/ledger/ledger-calls.ts';
import { pipelineDouble } from '../pipeline-double.ts';
import { keep, RECORD, release, type TestService, testService, VISIT } from '../service.ts';
import { type Fault, faultyBindings } from './faulty-bindings.ts';

const PAPER = new TextEncoder().encode('%PDF invented');
const PAPER_SHA256 = await sha256(PAPER);
const HANDED_IN = { ok: true, kind: 'pdf', pages: 1, obstacles: [], bytes: PAPER.length } as const;

/** A request with what has to be there before it, and the kinds of entries that the chain has once it was done. */
interface Operation {
  name: string;
  prepare(service: TestService): Promise<unknown>;
  send(service: TestService): Promise<Response>;
  chain: ChainEntry['kind'][];
}

const handIn = (service: TestService) =>
  service.call(`/v1/attachments/${PAPER_SHA256}`, { method: 'PUT', body: PAPER });

const KEYED = { 'Idempotency-Key': 'the same' };

const PACK = '/v1/packs/Q-TST-P1-1';

async function prepareRelease(service: TestService): Promise<void> {
  await handIn(service);
  await keep(service);
}

async function prepareReleased(service: TestService): Promise<void> {
  await prepareRelease(service);
  await release(service);
}

const OPERATIONS: readonly Operation[] = [
  {
    name: 'PUT attachment',
    // That the key is used is noted already: noting is no step that an answer waits for.
    prepare: ({ call }) => call('/v1/packs'),
    send: handIn,
    chain: [],
  },
  {
    name: 'PUT visit',
    prepare: keep,
    send: async ({ call }) => {
      const headers = { 'If-Match': `"${await sha256(JSON.stringify(RECORD))}"` };
      return call(VISIT, { method: 'PUT', body: { ...RECORD, note: 'amended' }, headers });
    },
    chain: ['visit-kept', 'visit-kept'],
  },
  {
    name: 'POST release',
    prepare: prepareRelease,
    send: sendRelease,
    chain: ['visit-kept', 'pack-sealed'],
  },
  {
    name: 'POST release with Idempotency-Key',
    prepare: prepareRelease,
    send: (service) => sendRelease(service, KEYED),
    chain: ['visit-kept', 'pack-sealed'],
  },
  {
    name: 'POST link',
    prepare: prepareReleased,
    send: (service) => service.call(`${PACK}/links`, { method: 'POST', body: { audience: 'owner' }, headers: KEYED }),
    chain: ['visit-kept', 'pack-sealed', 'link-made'],
  },
  {
    name: 'POST withdrawal',
    prepare: prepareReleased,
    send: (service) =>
      service.call(`${PACK}/withdrawal`, { method: 'POST', body: { by: 'Jonas Veldt', reason: 'Wrong scale' } }),
    chain: ['visit-kept', 'pack-sealed', 'pack-withdrawn'],
  },
];

/** The tag is computed, not asked for: what is sent again is the same request to the letter. */
async function sendRelease({ call }: TestService, headers: Record<string, string> = {}): Promise<Response> {
  const read = await sha256(`assessment of ${await sha256(JSON.stringify(RECORD))}`);
  const body = { by: 'jonas', knowsOfNoHazard: true };
  return call(`${VISIT}/release`, { method: 'POST', body, headers: { 'If-Match': `"${read}"`, ...headers } });
}

/** A service over faulty storage, whose record names a file, ready for the operation. */
async function readyFor(operation: Operation): Promise<{ service: TestService; fault: Fault }> {
  const { bindings, fault } = faultyBindings();
  const service = await testService({
    world: { archive: new CloudArchive(bindings) },
    pipeline: {
      async assess(...given) {
        const outcome = await pipelineDouble.assess(...given);
        if (outcome.ok) Object.assign(outcome.assessed, { attachments: { [PAPER_SHA256]: HANDED_IN } });
        return outcome;
      },
    },
  });
  // The same files would not be written again: each time takes the steps of the first.
  const { objects } = await env.BLOBS.list({ prefix: 'sha256/' });
  await env.BLOBS.delete(objects.map(({ key }) => key));
  await operation.prepare(service);
  fault.steps.length = 0;
  return { service, fault };
}

/** Every pack that is listed has all its files, whatever happened. */
async function expectWholePacks(service: TestService): Promise<void> {
  interface Listed {
    pdfSha256: string;
    recordSha256: string;
    manifestSha256: string;
  }
  const answer = await service.call('/v1/aircraft/Q-TST/packs');
  const { items } = await answer.json<{ items: Listed[] }>();
  for (const { pdfSha256, recordSha256, manifestSha256 } of items) {
    for (const digest of [pdfSha256, recordSha256, manifestSha256]) {
      const blob = await env.BLOBS.get(`sha256/${service.workshop}/${digest}`);
      expect(blob && (await sha256(await blob.bytes()))).toBe(digest);
    }
  }
}

async function expectChain(service: TestService, kinds: ChainEntry['kind'][]): Promise<void> {
  const answer = await service.call('/v1/aircraft/Q-TST/ledger');
  const { items } = await answer.json<{ items: ChainEntry[] }>();
  expect(await brokenEntry(items)).toBeUndefined();
  expect(items.map(({ kind }) => kind)).toEqual(kinds);
}

/** The answer to storage that fails: clear, with a time to come back, and nothing of what is behind it. */
async function expectUnavailable(response: Response, step: string): Promise<void> {
  expect(response.status, step).toBe(503);
  expect(response.headers.get('Retry-After')).toMatch(/^\d+$/);
  expect(response.headers.get('Content-Type')).toBe('application/problem+json');
  expect(await response.text()).not.toContain('storage unreachable');
}

describe.each(OPERATIONS)('$name with storage failing at any one step', (operation) => {
  test.each(['before', 'after'] as const)(
    '%s the step was taken: 503, nothing damaged, and again it succeeds',
    async (when) => {
      const counted = await readyFor(operation);
      expect((await operation.send(counted.service)).ok).toBe(true);
      const steps = [...counted.fault.steps];
      expect(steps.length).toBeGreaterThan(1);
      for (const [at, step] of steps.entries()) {
        const { service, fault } = await readyFor(operation);
        Object.assign(fault, { at, when });
        await expectUnavailable(await operation.send(service), step);
        fault.at = undefined;
        await expectWholePacks(service);
        const again = await operation.send(service);
        expect(again.ok, `${step}: ${again.status}`).toBe(true);
        await expectWholePacks(service);
        await expectChain(service, operation.chain);
      }
    },
  );
});
