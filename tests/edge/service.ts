import { env } from 'cloudflare:workers';
import { createApp } from '../../worker/edge/http/app.ts';
import type { Pipeline } from '../../worker/edge/http/route.ts';
import type { LogEvent } from '../../worker/edge/log-event.ts';
import { cloudWorld, type World } from '../../worker/edge/world.ts';
import { pipelineDouble, type SmallRecord } from './pipeline-double.ts';

export const ADMIN_SECRET = 'secret-of-the-test-deployment';

let workshops = 0;

/** What a test may replace of the service. */
interface Replaced {
  world?: Partial<World>;
  pipeline?: Partial<Pipeline>;
  /** A workshop that is there already. */
  of?: { workshop: string; key: string };
}

type Init = Omit<RequestInit, 'body' | 'headers'> & { body?: unknown; headers?: Record<string, string>; key?: string };

/** A service over the real storage with its own clock and log, and a workshop of its own. */
export async function testService({ world = {}, pipeline = {}, of }: Replaced = {}) {
  const clock = { at: Date.parse('2026-11-05T12:00:00Z') };
  const events: LogEvent[] = [];
  const ours = { now: () => new Date(clock.at), log: (event: LogEvent) => void events.push(event), ...world };
  const app = createApp({
    world: { ...cloudWorld(env), adminSecret: ADMIN_SECRET, ...ours },
    pipeline: { ...pipelineDouble, ...pipeline },
  });
  const workshop = of?.workshop ?? `shop-${++workshops}-${crypto.randomUUID().slice(0, 8)}`;

  /** Sends a request with the workshop's first key unless told otherwise; an object becomes JSON. */
  const call = async (path: string, { body, headers = {}, key = first, ...init }: Init = {}): Promise<Response> => {
    const isText = typeof body === 'string' || body instanceof ReadableStream || body instanceof Uint8Array;
    const content = body === undefined || isText ? {} : { 'Content-Type': 'application/json' };
    return app.request(`https://slipmark.example${path}`, {
      ...init,
      headers: { ...(key && { Authorization: `Bearer ${key}` }), ...content, ...headers },
      ...(body !== undefined && { body: (isText ? body : JSON.stringify(body)) as BodyInit }),
    });
  };

  let first = of?.key ?? '';
  if (of) return { call, clock, events, workshop, key: first };
  const created = await call('/v1/workshops', {
    method: 'POST',
    key: ADMIN_SECRET,
    body: { id: workshop, name: 'Test' },
  });
  first = (await created.json<{ key: { secret: string } }>()).key.secret;
  return { call, clock, events, workshop, key: first };
}

export type TestService = Awaited<ReturnType<typeof testService>>;

export const RECORD: SmallRecord = { aircraft: { registration: 'Q-TST' }, note: 'first' };
export const VISIT = '/v1/aircraft/Q-TST/visits/v1';

/** Keeps a record as visit `v1` of Q-TST, changing what is there. */
export async function keep({ call }: TestService, record: SmallRecord = RECORD, path = VISIT): Promise<Response> {
  const before = await call(path);
  const condition = before.ok ? { 'If-Match': before.headers.get('ETag') ?? '' } : { 'If-None-Match': '*' };
  return call(path, { method: 'PUT', body: record, headers: condition });
}

/** Releases a kept visit over its present assessment. */
export async function release(
  { call }: TestService,
  headers: Record<string, string> = {},
  path = VISIT,
): Promise<Response> {
  const assessment = await call(`${path}/assessment`);
  return call(`${path}/release`, {
    method: 'POST',
    body: { by: 'jonas', knowsOfNoHazard: true },
    headers: { 'If-Match': assessment.headers.get('ETag') ?? '', ...headers },
  });
}

/** Bytes that are no text to the platform, as the text that the double made them from. */
export const textOf = async (response: Response): Promise<string> => new TextDecoder().decode(await response.bytes());
