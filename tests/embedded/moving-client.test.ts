import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, describe, expect, test } from 'vitest';
import { type Client, clientFor } from '../../worker/embedded/moving/client.ts';
import { readAircraft } from '../../worker/embedded/moving/read-aircraft.ts';

let server: Server | undefined;

afterEach(() => void server?.close());

interface Scripted {
  status: number;
  headers?: Record<string, string>;
  body?: object;
}

/** A service that answers one after the other; it notes what it was asked. */
async function scripted(answers: readonly Scripted[]): Promise<{ client: Client; asked: string[] }> {
  const asked: string[] = [];
  server = createServer(({ url = '', headers }, response) => {
    const { status, headers: more = {}, body = {} } = answers[asked.length] ?? { status: 500 };
    asked.push(`${url} ${headers.authorization ?? 'nobody'}`);
    response.writeHead(status, more).end(JSON.stringify(body));
  });
  await new Promise<void>((resolve) => server?.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { client: clientFor(`http://127.0.0.1:${port}`, 'k'), asked };
}

describe('clientFor()', () => {
  test('asks again where the service asks to wait', async () => {
    const wait = { 'Retry-After': '0' };
    const { client, asked } = await scripted([
      { status: 429, headers: wait },
      { status: 503, headers: wait },
      { status: 200, body: { a: 1 } },
    ]);
    expect(await client.json('/x')).toEqual({ a: 1 });
    expect(asked).toEqual(Array(3).fill('/x Bearer k'));
  });

  test('follows a list to its end', async () => {
    const { client, asked } = await scripted([
      { status: 200, headers: { Link: '</x?after=2>; rel="next"' }, body: { items: [1, 2] } },
      { status: 200, body: { items: [3] } },
    ]);
    expect(await client.items('/x')).toEqual([1, 2, 3]);
    expect(asked[1]).toContain('/x?after=2');
  });

  test('tells a refusal with what the service said, and what is not there by null', async () => {
    const problem = { title: 'The key does not allow this', detail: 'scope', findings: [{ sentence: 'Because' }] };
    const { client } = await scripted([{ status: 403, body: problem }, { status: 404 }]);
    await expect(client.bytes('/x')).rejects.toThrow(
      'GET /x answered 403: The key does not allow this: scope\n  Because',
    );
    expect(await client.bytes('/x')).toBe(null);
  });
});

describe('readAircraft()', () => {
  /** An aircraft whose chain ends otherwise each time that it is looked at, until it rests. */
  const busyFor = (looks: number): Client => {
    let looked = 0;
    const json = async () => ({ head: { digest: String(Math.min(looks, looked++)) } });
    return {
      origin: '',
      send: async () => new Response(),
      bytes: async () => null,
      items: async () => [],
      json: json as Client['json'],
    };
  };

  test('reads again until nothing changed meanwhile', async () => {
    expect(await readAircraft(busyFor(3), 'Q-TST')).toMatchObject({ registration: 'Q-TST' });
  });

  test('gives up on an aircraft that never rests, and says so', async () => {
    await expect(readAircraft(busyFor(1000), 'Q-TST')).rejects.toThrow('Cannot export Q-TST: it was changed');
  });
});
