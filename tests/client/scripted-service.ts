import { type Service, type Slipmark, slipmark } from '../../worker/client/client.ts';

interface Scripted {
  /** 0: the connection breaks; -1: it breaks in the middle of the answer. */
  status: number;
  headers?: Record<string, string>;
  body?: unknown;
}

export interface AskedCall {
  url: string;
  method: string;
  headers: Headers;
  body: unknown;
}

/** What arrives of an answer whose connection breaks. */
const brokenBody = () =>
  new ReadableStream({
    start: (stream) => stream.enqueue(new TextEncoder().encode('{"pack":')),
    pull: (stream) => stream.error(new TypeError('terminated')),
  });

/** A service that answers one after the other; it notes what it was asked. */
export function scripted(answers: readonly Scripted[], more: Service = {}): { client: Slipmark; asked: AskedCall[] } {
  const asked: AskedCall[] = [];
  const fetch = async (url: string, init: RequestInit): Promise<Response> => {
    init.signal?.throwIfAborted();
    const { status, headers = {}, body } = answers[asked.length] ?? { status: 500 };
    asked.push({ url, method: init.method ?? '', headers: new Headers(init.headers), body: init.body });
    if (status === 0) throw new TypeError('fetch failed');
    if (status === -1) return new Response(brokenBody());
    const isJson = typeof body === 'object' && !(body instanceof Uint8Array);
    return new Response(isJson ? JSON.stringify(body) : (body as BodyInit | undefined), {
      status,
      headers: { ...(isJson && { 'Content-Type': 'application/json' }), ...headers },
    });
  };
  return { client: slipmark({ origin: 'https://slipmark.example', key: 'k', fetch, ...more }), asked };
}
