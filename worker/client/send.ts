import { problemOf, retryAfter, SlipmarkProblem } from './problem.ts';
import type { Answer, CallOptions } from './types.ts';

/** What the client knows of a call: generated. */
export interface KnownCall {
  method: string;
  path: string;
  headers?: readonly string[];
  /** Media type of what is sent. */
  type?: string;
  /** Its answer is a file: bytes, whatever their kind. */
  isFile?: boolean;
}

/** A service, and how it is spoken to. */
export interface Service {
  /** Without a slash at the end; empty for the service that a page came from. @default '' */
  origin?: string;
  /** Left out for what anybody may call. */
  key?: string;
  fetch?: (url: string, init: RequestInit) => Promise<Response>;
  /** How often the service may ask to wait before a call fails. @default 5 */
  mostWaits?: number;
  /** Told before each wait. */
  onWait?: (seconds: number) => void;
}

export type Values = Readonly<Record<string, unknown>>;

/** The longest wait that is granted at once, whatever is asked for. */
const LONGEST_WAIT_S = 60;

/** Makes a call, again where the service asks to wait. */
export async function send(
  service: Service,
  call: KnownCall,
  asked: Values,
  { signal }: CallOptions,
): Promise<Answer<unknown>> {
  const { fetch = (url, init) => globalThis.fetch(url, init), mostWaits = 5, onWait } = service;
  const { url, init } = requestOf(service, call, asked);
  const name = `${call.method} ${url.slice((service.origin ?? '').length)}`;
  for (let waits = 0; ; waits++) {
    const response = await fetch(url, { ...init, ...(signal && { signal }) }).catch((error: unknown) => {
      signal?.throwIfAborted();
      throw new SlipmarkProblem(`${call.method} ${url}`, { title: 'The service cannot be reached' }, { cause: error });
    });
    if (response.ok) return answerOf(name, call, response);
    const isToWait = response.status === 429 || response.status === 503;
    if (!isToWait || waits >= mostWaits) throw await problemOf(name, response);
    await response.body?.cancel();
    const seconds = Math.min(LONGEST_WAIT_S, retryAfter(response.headers) ?? 1);
    onWait?.(seconds);
    await pause(seconds, signal);
  }
}

function requestOf({ origin = '', key }: Service, call: KnownCall, asked: Values): { url: string; init: RequestInit } {
  const { body, accept, ...others } = asked;
  const headers = new Headers(key ? { Authorization: `Bearer ${key}` } : {});
  if (typeof accept === 'string') headers.set('Accept', accept);
  if (call.type !== undefined) headers.set('Content-Type', call.type);
  // So that a call repeated after a wait is done once.
  if (call.headers?.includes('Idempotency-Key')) headers.set('Idempotency-Key', randomName());
  const named = new Map(call.headers?.map((header) => [fieldOf(header), header]));
  const query = new URLSearchParams();
  let path = call.path;
  for (const [field, value] of Object.entries(others)) {
    const header = named.get(field);
    if (value === undefined) continue;
    if (header !== undefined) headers.set(header, String(value));
    else if (path.includes(`{${field}}`)) path = path.replace(`{${field}}`, encodeURIComponent(String(value)));
    else query.set(field, String(value));
  }
  const content = call.type === undefined ? {} : { body: isRaw(body) ? body : JSON.stringify(body) };
  const search = query.size > 0 ? `?${query}` : '';
  return { url: origin + path + search, init: { method: call.method, headers, ...content } };
}

/** `If-Match` as `ifMatch`. */
function fieldOf(header: string): string {
  const joined = header.replaceAll('-', '');
  return joined.charAt(0).toLowerCase() + joined.slice(1);
}

const isRaw = (body: unknown): body is Uint8Array<ArrayBuffer> | Blob =>
  body instanceof Uint8Array || body instanceof Blob;

/** `crypto.randomUUID` is not there for pages that came without encryption, as on a network of a workshop. */
const randomName = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');

async function answerOf(name: string, { isFile }: KnownCall, response: Response): Promise<Answer<unknown>> {
  const { status, headers } = response;
  const bytes = new Uint8Array(await response.arrayBuffer());
  const next = /<([^>]+)>; rel="next"/.exec(headers.get('Link') ?? '')?.[1];
  return {
    status,
    body: isFile ? bytes : bodyOf(name, response, bytes),
    bytes,
    etag: headers.get('ETag') ?? undefined,
    next: next === undefined ? undefined : (new URLSearchParams(next.split('?')[1]).get('after') ?? undefined),
  };
}

function bodyOf(name: string, { status, headers }: Response, bytes: Uint8Array): unknown {
  if (status === 204) return undefined;
  const type = headers.get('Content-Type') ?? '';
  const isJson = /^application\/([\w.-]+\+)?json\b/.test(type);
  if (!isJson && !type.startsWith('text/')) return bytes;
  const text = new TextDecoder().decode(bytes);
  if (!isJson) return text;
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new SlipmarkProblem(name, { status, detail: 'What was answered as JSON is none' }, { cause: error });
  }
}

/** @throws the reason of the signal, as soon as it is aborted */
function pause(seconds: number, signal: AbortSignal | undefined): Promise<void> {
  return new Promise((resolve, reject) => {
    signal?.throwIfAborted();
    const stop = (): void => {
      clearTimeout(timer);
      reject(signal?.reason);
    };
    const timer = setTimeout(() => {
      signal?.removeEventListener('abort', stop);
      resolve();
    }, 1000 * seconds);
    signal?.addEventListener('abort', stop, { once: true });
  });
}
