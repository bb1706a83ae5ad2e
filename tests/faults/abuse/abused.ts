import { setTimeout as pause } from 'node:timers/promises';
import { expectSound } from './expect-sound.ts';
import { serviceInNode } from './service-in-node.ts';

/** Far above what any request takes on a slow machine. */
const HANGING_MS = 60_000;

export interface Sent {
  method: string;
  body?: BodyInit;
  headers?: Record<string, string>;
}

/** A service to which anything is sent, every answer of which must be sound. */
export interface Abused {
  /** Requests until now. */
  sent: number;
  key: string;
  /** @returns the status of the sound answer */
  send(path: string, sent: Sent): Promise<number>;
  /** The same, with the answer, read twice. */
  ask(path: string, sent: Sent): Promise<Response>;
}

export async function abused(): Promise<Abused> {
  const { app, key } = await serviceInNode();
  const service: Abused = {
    sent: 0,
    key,
    async ask(path, { headers = {}, ...init }) {
      service.sent += 1;
      const content = init.body === undefined ? {} : { 'Content-Type': 'application/json' };
      const all = { Authorization: `Bearer ${key}`, ...content, ...headers };
      const request = new Request(`https://slipmark.example${path}`, {
        ...init,
        headers: all,
        ...streaming(init.body),
      });
      const answered = Promise.resolve(app.request(request));
      const response = await Promise.race([answered, pause(HANGING_MS, undefined, { ref: false })]);
      const what = `${init.method} ${path} ${String(init.body ?? '').slice(0, 5_000)}`;
      if (!response) throw new Error(`No answer to ${what}`);
      await expectSound(response.clone(), what);
      return response;
    },
    async send(path, sent) {
      return (await service.ask(path, sent)).status;
    },
  };
  return service;
}

/** A body that comes in pieces has to say so. */
function streaming(body: BodyInit | undefined): { duplex?: 'half' } {
  return body instanceof ReadableStream ? { duplex: 'half' } : {};
}
