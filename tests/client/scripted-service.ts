import { type Service, type Slipmark, slipmark } from '../../worker/client/client.ts';

interface Scripted {
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

/** A service that answers one after the other; it notes what it was asked. */
export function scripted(answers: readonly Scripted[], more: Service = {}): { client: Slipmark; asked: AskedCall[] } {
  const asked: AskedCall[] = [];
  const fetch = async (url: string, init: RequestInit): Promise<Response> => {
    init.signal?.throwIfAborted();
    const { status, headers = {}, body } = answers[asked.length] ?? { status: 500 };
    asked.push({ url, method: init.method ?? '', headers: new Headers(init.headers), body: init.body });
    const isJson = typeof body === 'object' && !(body instanceof Uint8Array);
    return new Response(isJson ? JSON.stringify(body) : (body as BodyInit | undefined), {
      status,
      headers: { ...(isJson && { 'Content-Type': 'application/json' }), ...headers },
    });
  };
  return { client: slipmark({ origin: 'https://slipmark.example', key: 'k', fetch, ...more }), asked };
}
