import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { slipmark } from '../../../worker/client/client.ts';
import { bundle } from '../../../worker/local/service/bundle.ts';
import type { Embedded } from '../../../worker/local/service/embedded.ts';
import { recall, remember } from '../../../worker/local/service/memory.ts';
import { serveDemo } from '../../../worker/local/service/serve-demo.ts';

let script: string;
let storage: string;
let service: Embedded | undefined;
let told: string[];

beforeAll(async () => {
  script = await bundle();
});

beforeEach(() => {
  storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
});

afterEach(async () => {
  await service?.stop();
  service = undefined;
  rmSync(storage, { recursive: true, force: true });
});

async function start(): Promise<Embedded> {
  told = [];
  const tell = (line: string) => void told.push(line);
  service = await serveDemo({ script, storage, out: join(storage, 'out'), wantedPort: 18_590, tell });
  return service;
}

async function stop(): Promise<void> {
  await service?.stop();
  service = undefined;
}

const isServing = async (): Promise<boolean> => (await fetch(`${service?.origin}/readyz`)).ok;

/** The demo is not shown, for the reason that is told, and the service runs. */
async function expectWithoutDemo(why: RegExp): Promise<void> {
  await start();
  expect(told.at(-1)).toMatch(/^The demo cannot be shown; the service runs without it\. /);
  expect(told.at(-1)).toMatch(why);
  expect(await isServing()).toBe(true);
}

describe('npm start', () => {
  test('starts whatever became of the demo: its key revoked, or its workshop without a key', async () => {
    const { origin } = await start();
    expect(told.map((line) => line.split(/ {2}/)[0])).toEqual([
      'Documentation',
      "Owner's link",
      'Pack (PDF)',
      'Key',
      'Try',
    ]);
    const { key = '' } = recall(storage);
    const client = slipmark({ origin, key });
    const { body } = await client.makeKey({ body: { label: 'another', scopes: ['admin'] } });
    const [first] = (await client.listKeys()).body.items;
    await slipmark({ origin, key: body.secret }).revokeKey({ key: first?.key ?? '' });
    await stop();
    await expectWithoutDemo(/answered 401/);
    await stop();
    const { adminSecret, sealSecret } = recall(storage);
    remember(storage, { adminSecret, sealSecret });
    await expectWithoutDemo(/The workshop exists already/);
  });

  test('goes on where a start of another day broke off after the record was kept', async () => {
    const { origin } = await start();
    const { pack: _, ownerPath: __, ...memory } = recall(storage);
    const visit = { registration: 'Q-SLM', visit: 'avionics-and-service' };
    const client = slipmark({ origin, key: memory.key ?? '' });
    const before = await client.getVisit(visit);
    await client.putVisit({ ...visit, body: { ...before.body, worksheet: [] }, ifMatch: before.etag });
    await stop();
    remember(storage, memory);
    await start();
    expect(told.at(-1)).toContain('/v1/packs/Q-SLM-P1-2');
  });

  test('sets a damaged list of packs aside, and says how it is filled again', async () => {
    const { origin } = await start();
    const { key = '' } = recall(storage);
    await stop();
    const folder = join(storage, 'index/miniflare-D1DatabaseObject');
    for (const file of readdirSync(folder)) {
      if (file.endsWith('-shm')) continue;
      writeFileSync(join(folder, file), Buffer.alloc(statSync(join(folder, file)).size || 4096, 7));
    }
    writeFileSync(join(storage, 'objects/slipmark-Ledger/metadata.sqlite'), 'no database');
    await start();
    expect(told[0]).toMatch(/list of packs was damaged and is set aside: .*slipmark reindex/);
    expect(told.at(-1)).toContain('/v1/packs/Q-SLM-P1-1');
    const client = slipmark({ origin: service?.origin ?? origin, key });
    expect((await client.listPacks({})).body.items).toEqual([]);
    await client.relistAircraft({ registration: 'Q-SLM' });
    await expect.poll(async () => (await client.listPacks({})).body.items.length).toBe(1);
  });

  test('is refused on a storage that is served already', async () => {
    await start();
    const first = service;
    await expect(start()).rejects.toThrow('Slipmark runs already on this storage');
    service = first;
    expect(await isServing()).toBe(true);
  });
});

describe('what is remembered', () => {
  test('is written once, and only where something changed', () => {
    const memory = recall(storage);
    const file = join(storage, 'memory.json');
    const { ino } = statSync(file);
    expect(recall(storage)).toEqual(memory);
    remember(storage, memory);
    expect(statSync(file).ino).toBe(ino);
    remember(storage, { ...memory, pack: 'Q-SLM-P1-1' });
    expect(recall(storage)).toEqual({ ...memory, pack: 'Q-SLM-P1-1' });
    expect(existsSync(`${file}.new`)).toBe(false);
  });

  test.each(['', '{"adminSecret":"a"', '{"adminSecret":"a"}', 'null'])(
    'is never made anew over a file that is damaged: %j',
    (content) => {
      const file = join(storage, 'memory.json');
      writeFileSync(file, content);
      expect(() => recall(storage)).toThrow(/is damaged, and it holds the secret that packs are sealed under/);
      expect(readFileSync(file, 'utf8')).toBe(content);
    },
  );

  test('a file that a broken start left beside it is no obstacle', () => {
    writeFileSync(join(storage, 'memory.json.new'), '{');
    const memory = recall(storage);
    expect(recall(storage)).toEqual(memory);
  });
});
