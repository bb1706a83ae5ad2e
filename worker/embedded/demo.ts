import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from './files-in.ts';
import type { Memory } from './memory.ts';
import { ROOT } from './places.ts';
import { redated } from './redated.ts';

const WORKSHOP = { id: 'demo', name: 'Demo workshop' };
const VISIT = 'avionics-and-service';

interface Sent {
  method?: string;
  key: string;
  body?: unknown;
  headers?: Record<string, string>;
}

/**
 * Puts the demo into a running service over HTTP, as any client would: workshop, visit, release, owner's link. Steps that
 * were taken at an earlier start are left out.
 *
 * @param keep called after each step with what is to be remembered
 * @returns memory in which key, ownerPath and pack are set
 */
export async function putDemo(origin: string, memory: Memory, keep: (memory: Memory) => void) {
  const key = memory.key ?? (await createWorkshop(origin, memory.adminSecret));
  keep({ ...memory, key });
  const pack = memory.pack ?? (await releaseDemo(origin, key));
  keep({ ...memory, key, pack });
  const ownerPath = memory.ownerPath ?? (await linkTo(origin, key, pack));
  const complete = { ...memory, key, pack, ownerPath };
  keep(complete);
  return complete;
}

async function createWorkshop(origin: string, adminSecret: string): Promise<string> {
  const answer = await send(`${origin}/v1/workshops`, { method: 'POST', key: adminSecret, body: WORKSHOP });
  const { key } = (await answer.json()) as { key: { secret: string } };
  return key.secret;
}

async function releaseDemo(origin: string, key: string): Promise<string> {
  const full = JSON.parse(readFileSync(join(ROOT, 'fixtures/visits/nose-wheel-full.json'), 'utf8'));
  // The demo may be put in at night: without a departure nothing depends on the hour.
  const { departure: _departure, ...record } = redated(full, new Date());
  await handIn(origin, key);
  const address = `${origin}/v1/aircraft/${record.aircraft.registration}/visits/${VISIT}`;
  await send(address, { method: 'PUT', key, body: record });
  const assessment = await send(`${address}/assessment`, { key });
  const released = await send(`${address}/release`, {
    method: 'POST',
    key,
    body: { by: record.release.by, knowsOfNoHazard: true },
    headers: { 'If-Match': assessment.headers.get('ETag') ?? '' },
  });
  const { pack } = (await released.json()) as { pack: string };
  return pack;
}

/** Hands in the files that the demo record names. */
async function handIn(origin: string, key: string): Promise<void> {
  const { files, facts } = await filesIn(join(ROOT, 'fixtures/attachments'));
  for (const [sha256, bytes] of Object.entries(files))
    if (facts[sha256]?.ok) await send(`${origin}/v1/attachments/${sha256}`, { method: 'PUT', key, body: bytes });
}

async function linkTo(origin: string, key: string, pack: string): Promise<string> {
  const answer = await send(`${origin}/v1/packs/${pack}/links`, { method: 'POST', key, body: { audience: 'owner' } });
  const { url } = (await answer.json()) as { url: string };
  return new URL(url).pathname;
}

/** @returns the bytes of the sealed PDF */
export async function pdfOf(origin: string, { key = '', pack = '' }: Memory): Promise<Uint8Array> {
  return (await send(`${origin}/v1/packs/${pack}/pack.pdf`, { key })).bytes();
}

async function send(url: string, { method = 'GET', key, body, headers = {} }: Sent): Promise<Response> {
  const isFile = body instanceof Uint8Array;
  const type = isFile ? 'application/octet-stream' : 'application/json';
  const content = body === undefined ? {} : { 'Content-Type': type };
  const response = await fetch(url, {
    method,
    headers: { Authorization: `Bearer ${key}`, ...content, ...headers },
    ...(body !== undefined && { body: isFile ? (body as Uint8Array<ArrayBuffer>) : JSON.stringify(body) }),
  });
  if (response.ok) return response;
  throw new Error(`Cannot put the demo in: ${method} ${new URL(url).pathname} answered ${await response.text()}`);
}
