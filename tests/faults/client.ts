/** An answer, read to its end: one that breaks off half way is no answer. */
export interface Answer {
  status: number;
  headers: Headers;
  bytes: Uint8Array;
}

export interface Sent {
  method?: string;
  body?: unknown;
  headers?: Record<string, string>;
}

/** Sends requests with one key. What is no bytes goes as JSON. */
export type Client = (path: string, sent?: Sent) => Promise<Answer>;

export function clientOf(origin: string, key: string): Client {
  return async (path, { method = 'GET', body, headers = {} } = {}) => {
    const isFile = body instanceof Uint8Array;
    const type = { 'Content-Type': isFile ? 'application/octet-stream' : 'application/json' };
    const response = await fetch(origin + path, {
      method,
      headers: { Authorization: `Bearer ${key}`, ...(body !== undefined && type), ...headers },
      ...(body !== undefined && { body: isFile ? (body as Uint8Array<ArrayBuffer>) : JSON.stringify(body) }),
    });
    return { status: response.status, headers: response.headers, bytes: await response.bytes() };
  };
}

/** The body of an answer as JSON. */
export function jsonOf<T>({ bytes }: Answer): T {
  return JSON.parse(new TextDecoder().decode(bytes)) as T;
}

export const tagOf = ({ headers }: Answer): string => headers.get('ETag') ?? '';

/** Every item of a list, page after page. */
export async function itemsOf<T>(client: Client, path: string): Promise<T[]> {
  const items: T[] = [];
  let next: string | undefined = path;
  while (next !== undefined) {
    const answer: Answer = await client(next);
    if (answer.status !== 200) throw new Error(`Cannot list ${next}: the status must be 200: it is ${answer.status}`);
    items.push(...jsonOf<{ items: T[] }>(answer).items);
    next = /<([^>]+)>; rel="next"/.exec(answer.headers.get('Link') ?? '')?.[1];
  }
  return items;
}

/** Creates a workshop and gives a client with its first key. */
export async function newWorkshop(origin: string, adminSecret: string, id: string): Promise<{ key: string }> {
  const body = { id, name: 'Workshop of the fault tests' };
  const answer = await clientOf(origin, adminSecret)('/v1/workshops', { method: 'POST', body });
  const { key } = jsonOf<{ key: { secret: string } }>(answer);
  return { key: key.secret };
}
