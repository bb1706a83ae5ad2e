import { problemOf, retryAfter, SlipmarkProblem } from './problem.ts';
import type { Answer, CallOptions } from './types.ts';

// The client repeats reads, a `PUT` under a digest or `If-Match`, and calls with `isRepeatable` or an
// `Idempotency-Key`. It does not repeat a `PUT` with `If-None-Match: *`: the second try would be refused as if
// somebody else had been first.

/** Data of a call that the client needs; generated. */
export interface KnownCall {
  method: string;
  path: string;
  headers?: readonly string[];
  /** Media type of the request body. */
  type?: string;
  /** Whether a repeated call has no further effect. */
  isRepeatable?: boolean;
  /** Whether the response is a file: bytes of any media type. */
  isFile?: boolean;
}

/** Address of a service, and settings of the client. */
export interface Service {
  /** Origin without a slash at the end; empty for the service of the current page. @default '' */
  origin?: string;
  /** API key; omitted for public calls. */
  key?: string;
  fetch?: (url: string, init: RequestInit) => Promise<Response>;
  /** Max. number of waits that the service may require before a call fails. @default 5 */
  mostWaits?: number;
  /** Called before each wait. */
  onWait?: (seconds: number) => void;
}

export type Values = Readonly<Record<string, unknown>>;

/** Longest single wait, even if the service requires more. */
const LONGEST_WAIT_S = 60;

/** Pauses before each repetition of a call whose connection broke, in seconds. */
const PAUSES_S = [0.1, 0.5, 1] as const;

/** Makes a call; repeats it if the service requires a wait, or if the connection broke and the call may be repeated. */
export async function send(
  service: Service,
  call: KnownCall,
  asked: Values,
  { signal }: CallOptions,
): Promise<Answer<unknown>> {
  const { fetch = (url, init) => globalThis.fetch(url, init), mostWaits = 5, onWait } = service;
  const { url, init } = requestOf(service, call, asked);
  const name = `${call.method} ${url.slice((service.origin ?? '').length)}`;
  // A response counts only once all of it has arrived.
  const once = async (): Promise<Arrived> => {
    const response = await fetch(url, { ...init, ...(signal && { signal }) });
    return { response, bytes: new Uint8Array(await response.arrayBuffer()) };
  };
  for (let waits = 0; ; waits++) {
    const { response, bytes } = await (mayRepeat(call, init.headers) ? repeatedly(once, signal) : once()).catch(
      (error: unknown) => {
        signal?.throwIfAborted();
        throw new SlipmarkProblem(
          `${call.method} ${url}`,
          { title: 'The service cannot be reached' },
          { cause: error },
        );
      },
    );
    if (response.ok) return answerOf(name, call, { response, bytes });
    const isToWait = response.status === 429 || response.status === 503;
    if (!isToWait || waits >= mostWaits) throw problemOf(name, response, new TextDecoder().decode(bytes));
    const seconds = Math.min(LONGEST_WAIT_S, retryAfter(response.headers) ?? 1);
    onWait?.(seconds);
    await pause(seconds, signal);
  }
}

/**
 * Whether a request may be repeated without knowing its outcome: reads, writes named by their digest or based on the
 * version that was read, calls without further effect, and calls with a key by which the service recognises them. A
 * call that creates something that must not exist yet may not be repeated.
 */
function mayRepeat({ method, headers: known = [], isRepeatable }: KnownCall, headers: Headers): boolean {
  if (method === 'GET' || method === 'DELETE' || isRepeatable) return true;
  if (method === 'PUT') return !known.includes('If-Match') || headers.has('If-Match');
  return headers.has('Idempotency-Key');
}

async function repeatedly(once: () => Promise<Arrived>, signal: AbortSignal | undefined): Promise<Arrived> {
  for (const seconds of PAUSES_S) {
    const arrived = await once().catch(() => undefined);
    if (arrived) return arrived;
    await pause(seconds, signal);
  }
  return once();
}

interface Arrived {
  response: Response;
  bytes: Uint8Array<ArrayBuffer>;
}

function requestOf(
  { origin = '', key }: Service,
  call: KnownCall,
  asked: Values,
): { url: string; init: RequestInit & { headers: Headers } } {
  const { body, accept, ...others } = asked;
  const headers = new Headers(key ? { Authorization: `Bearer ${key}` } : {});
  if (typeof accept === 'string') headers.set('Accept', accept);
  if (call.type !== undefined) headers.set('Content-Type', call.type);
  // A call repeated after a wait then takes effect only once.
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

/** Returns a random name. `crypto.randomUUID` is missing on unencrypted pages, as on a network of a workshop. */
const randomName = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');

function answerOf(name: string, { isFile }: KnownCall, { response, bytes }: Arrived): Answer<unknown> {
  const { status, headers } = response;
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
    throw new SlipmarkProblem(name, { status, detail: 'The response is not valid JSON' }, { cause: error });
  }
}

/**
 * Waits for some seconds.
 *
 * @throws the reason of the signal, as soon as it is aborted
 */
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
