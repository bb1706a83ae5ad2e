import { join } from 'node:path';
import * as pipeline from '../../../worker/core/core.ts';
import { Ledger } from '../../../worker/edge/archive/ledger/ledger.ts';
import { Workshop } from '../../../worker/edge/archive/workshop/workshop.ts';
import type { Bindings } from '../../../worker/edge/env.ts';
import { createApp } from '../../../worker/edge/http/app.ts';
import type { LogEvent } from '../../../worker/edge/log-event.ts';
import { cloudWorld } from '../../../worker/edge/world.ts';
import { migrateIndex } from '../../../worker/local/service/index-migrations.ts';
import { WORKER } from '../../../worker/local/service/places.ts';
import { bucket } from './bucket.ts';
import { indexDatabase, objectStorage } from './sql-storage.ts';

const ADMIN_SECRET = 'secret-of-the-test-deployment';

/** The clock of the service: a day on which the small fixtures can be released. */
const NOW = '2026-09-19T12:00:00Z';

type Stateful = new (state: DurableObjectState, env: Bindings) => Ledger | Workshop;

/** Objects by name, made when they are first asked for. */
function namespace(env: Bindings, kind: Stateful) {
  const objects = new Map<string, Ledger | Workshop>();
  const made = (name: string) => {
    const storage = objectStorage(() => {
      if (object instanceof Ledger) void object.alarm();
    });
    const state = { storage, blockConcurrencyWhile: (task: () => Promise<void>) => void task() };
    const object: Ledger | Workshop = new kind(state as unknown as DurableObjectState, env);
    objects.set(name, object);
    return object;
  };
  return { idFromName: (name: string) => name, get: (name: string) => objects.get(name) ?? made(name) };
}

/** The whole service with the real stages and the real ledgers, in this process, over storage in memory. */
export async function serviceInNode() {
  const env = {
    BLOBS: bucket(),
    INDEX: indexDatabase(),
    SLIPMARK_ADMIN: ADMIN_SECRET,
    SLIPMARK_SEAL: 'seal-secret-of-the-test-deployment',
  } as unknown as Bindings;
  const stateful = { LEDGER: namespace(env, Ledger), WORKSHOP: namespace(env, Workshop) };
  Object.assign(env, stateful as unknown as Pick<Bindings, 'LEDGER' | 'WORKSHOP'>);
  await migrateIndex(
    env.INDEX as unknown as Parameters<typeof migrateIndex>[0],
    join(WORKER, 'edge/archive/migrations'),
  );
  const events: LogEvent[] = [];
  const log = (event: LogEvent) => void events.push(event);
  const ours = { now: () => new Date(NOW), log, requestsPerMinute: Number.POSITIVE_INFINITY };
  const app = createApp({ world: { ...cloudWorld(env), ...ours }, pipeline });
  const created = await app.request('https://slipmark.example/v1/workshops', {
    method: 'POST',
    headers: { Authorization: `Bearer ${ADMIN_SECRET}`, 'Content-Type': 'application/json' },
    body: JSON.stringify({ id: 'abuse', name: 'Abused' }),
  });
  const { key } = (await created.json()) as { key: { secret: string } };
  return { app, key: key.secret, events };
}
