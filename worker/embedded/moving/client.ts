import { setTimeout as pause } from 'node:timers/promises';

/** A service, spoken to with one key. */
export interface Client {
  origin: string;
  /** Sends a request, again where the service asks to wait. Answers of every other status come back. */
  send(path: string, request?: Sent): Promise<Response>;
  /** @throws Error naming call and answer, unless it is 2xx; null for 404 */
  json<Answer>(path: string): Promise<Answer | null>;
  /** @throws Error unless it is 2xx; null for 404 */
  bytes(path: string): Promise<Uint8Array | null>;
  /** Every item of a list, page by page. */
  items<Item>(path: string): Promise<Item[]>;
}

export interface Sent {
  method?: 'PUT' | 'POST';
  /** Bytes as they are, anything else as JSON. */
  body?: Uint8Array | object;
  headers?: Record<string, string>;
}

/** How often a service may ask to wait, and the longest wait that is granted. */
const MOST_WAITS = 20;
const LONGEST_WAIT_S = 60;

/** @param origin without a slash at the end */
export function clientFor(origin: string, key: string): Client {
  const send = async (path: string, { method, body, headers = {} }: Sent = {}): Promise<Response> => {
    for (let waits = 0; ; waits++) {
      const response = await fetch(origin + path, { ...(method && { method }), ...contentOf(body, key, headers) });
      const isToWait = response.status === 429 || response.status === 503;
      if (!isToWait || waits >= MOST_WAITS) return response;
      await response.body?.cancel();
      const seconds = Number(response.headers.get('Retry-After') ?? 1);
      await pause(1000 * Math.min(LONGEST_WAIT_S, Number.isFinite(seconds) ? seconds : 1));
    }
  };
  const got = async (path: string): Promise<Response | null> => {
    const response = await send(path);
    if (response.status === 404) return null;
    if (!response.ok) throw await refusal(`GET ${path}`, response);
    return response;
  };
  const items = async <Item>(path: string): Promise<Item[]> => {
    const all: Item[] = [];
    for (let next: string | undefined = path; next !== undefined; ) {
      const response = await got(next);
      if (!response) return all;
      all.push(...((await response.json()) as { items: Item[] }).items);
      next = /<([^>]+)>; rel="next"/.exec(response.headers.get('Link') ?? '')?.[1];
    }
    return all;
  };
  return {
    origin,
    send,
    items,
    json: async <Answer>(path: string) => ((await (await got(path))?.json()) ?? null) as Answer | null,
    bytes: async (path) => (await (await got(path))?.bytes()) ?? null,
  };
}

function contentOf(body: Sent['body'], key: string, more: Record<string, string>): RequestInit {
  const headers = { ...(key !== '' && { Authorization: `Bearer ${key}` }), ...more };
  if (body === undefined) return { headers };
  if (body instanceof Uint8Array)
    return {
      headers: { ...headers, 'Content-Type': 'application/octet-stream' },
      body: body as Uint8Array<ArrayBuffer>,
    };
  return { headers: { ...headers, 'Content-Type': 'application/json' }, body: JSON.stringify(body) };
}

/** What a call was answered with, in one line; up to three findings of it in lines of their own. */
export async function refusal(call: string, response: Response): Promise<Error> {
  const text = await response.text();
  let said = text.slice(0, 200);
  try {
    const { title, detail, findings } = JSON.parse(text) as Said;
    const sentences = (findings ?? []).slice(0, 3).map(({ sentence }) => `\n  ${sentence}`);
    said = `${title}: ${detail}${sentences.join('')}`;
  } catch {
    // An answer of something that stands before the service: its text says what it can.
  }
  return new Error(`${call} answered ${response.status}: ${said}`);
}

interface Said {
  title: string;
  detail: string;
  findings?: { sentence: string }[];
}
