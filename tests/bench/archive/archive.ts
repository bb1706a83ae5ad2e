// Node script, `npm run bench:archive`: whether reads, lists and releases stay level while the archive grows, and how many
// requests two processors answer. Judges nothing.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { Miniflare } from 'miniflare';
import { bundle } from '../../../worker/local/service/bundle.ts';
import { type Embedded, startEmbedded } from '../../../worker/local/service/embedded.ts';
import { type Answer, type Client, jsonOf } from '../../faults/client.ts';
import { smallRecord } from '../../faults/small-visit.ts';
import { readFixture } from '../../read-fixture.ts';
import { fillIndex, fillLedger } from './fill.ts';
import { atOnce, inTurn, printed, type Times } from './timing.ts';
import { linkTo, manyClients, releaseAgain, WORKSHOP } from './workload.ts';

const SIZES = [100, 10_000, 100_000];
const READS = 200;
const RELEASES = 20;
const WIDTH = 16;
const LOAD_MS = 6_000;
const SECRETS = { adminSecret: 'secret-of-the-bench', sealSecret: 'seal-secret-of-the-bench' };

const say = (line: string): void => void process.stdout.write(`${line}\n`);

async function expectOk(answer: Promise<Answer>): Promise<Answer> {
  const { status, bytes } = await answer;
  if (status >= 300)
    throw new Error(`A request of the bench must succeed: ${status} ${new TextDecoder().decode(bytes)}`);
  return answer;
}

/** Everything that is asked of an archive, with how often. */
function questions(client: Client, owner: string): Record<string, () => Promise<Times>> {
  const read = (path: string) => () => inTurn(READS, () => expectOk(client(path)));
  const middle = encodeURIComponent('2010-01-03T00:00:00.000Z|~');
  let released = 0;
  const release = (registration: string) => () =>
    inTurn(RELEASES, () => releaseAgain(client, registration, 'v1', `Release ${Date.now()} ${released++}`));
  return {
    'list of all packs, first page': read('/v1/packs?limit=50'),
    'list of all packs, far back': read(`/v1/packs?limit=50&after=${middle}`),
    'packs of an aircraft': read('/v1/aircraft/Q-SHORT/packs'),
    'packs of the aircraft with a long history': read('/v1/aircraft/Q-LONG/packs'),
    'a page of its ledger': read('/v1/aircraft/Q-LONG/ledger?limit=50&after=1'),
    'a pack of it': read('/v1/packs/Q-LONG-P1-1'),
    "owner's page of it": read(owner),
    'amend and release an aircraft': release('Q-SHORT'),
    'amend and release the one with a long history': release('Q-LONG'),
  };
}

/** A bench over an archive that was not filled would measure nothing. */
async function expectPacks(client: Client, least: number): Promise<void> {
  const { packs } = jsonOf<{ packs: number }>(await client('/v1/aircraft/Q-LONG'));
  if (packs < least) throw new Error(`The long history must have ${least} packs: current value is ${packs}`);
}

async function whileItGrows(script: string, storage: string): Promise<void> {
  const start = (): Promise<Embedded> => startEmbedded({ script, storage, port: 0, ...SECRETS });
  let service = await start();
  const clientsAt = await manyClients(service.origin, SECRETS.adminSecret);
  const first = clientsAt(service.origin);
  await releaseAgain(first, 'Q-SHORT', 'v1', 'First');
  const owner = await linkTo(first, await releaseAgain(first, 'Q-LONG', 'long', 'First'));
  await releaseAgain(first, 'Q-LONG', 'v1', 'Second');
  const results = new Map<string, Times[]>();
  for (const size of SIZES) {
    await service.stop();
    fillIndex(storage, WORKSHOP, size);
    fillLedger(storage, 'long', size / 10);
    service = await start();
    const client = clientsAt(service.origin);
    await expectPacks(client, size / 10);
    await releaseAgain(client, 'Q-WARM', 'v1', `Warm ${size}`);
    for (const [name, ask] of Object.entries(questions(client, owner)))
      results.set(name, [...(results.get(name) ?? []), await ask()]);
  }
  say(
    `\nAn archive of ${SIZES.map((size) => size.toLocaleString('en')).join(', ')} packs in the index and a tenth of them in one ledger: p50 (p99) in ms, in turn`,
  );
  for (const [name, times] of results)
    say(
      `${name.padEnd(48)}${times.map(({ p50, p99 }) => `${p50.toFixed(1)} (${p99.toFixed(1)})`.padStart(18)).join('')}`,
    );
  await underLoad(clientsAt(service.origin), owner);
  await service.stop();
}

/** Load and service share the processors of this machine: the ratios to the bare route count. */
async function underLoad(client: Client, owner: string): Promise<void> {
  const built = await build({
    entryPoints: [join(import.meta.dirname, 'bare-route.ts')],
    bundle: true,
    format: 'esm',
    write: false,
    logLevel: 'error',
  });
  const script = built.outputFiles[0]?.text ?? '';
  const bare = new Miniflare({ modules: true, script, cf: false, compatibilityDate: '2026-07-01' });
  const { origin } = await bare.ready;
  const assess = (body: unknown) => () => expectOk(client('/v1/assessments', { method: 'POST', body }));
  const loads: Record<string, (index: number) => Promise<unknown>> = {
    'bare Hono route': async () => (await fetch(`${origin}/bare`)).text(),
    'assessment of a weighing (5 kB)': assess(smallRecord('Q-SHORT', 'Load')),
    'assessment of a full visit (126 kB)': assess(readFixture('visits/nose-wheel-full')),
    "owner's page": () => expectOk(client(owner)),
    'pack as JSON': () => expectOk(client('/v1/packs/Q-SHORT-P1-1')),
    'sealed PDF': () => expectOk(client('/v1/packs/Q-SHORT-P1-1/pack.pdf')),
  };
  say(`\nUnder load, ${WIDTH} at once for ${LOAD_MS / 1000} s each`);
  for (const [name, ask] of Object.entries(loads)) {
    await atOnce(WIDTH, 1_000, ask);
    say(`${name.padEnd(48)}${printed(await atOnce(WIDTH, LOAD_MS, ask))}`);
  }
  await bare.dispose();
}

const storage = mkdtempSync(join(tmpdir(), 'slipmark-bench-'));
try {
  await whileItGrows(await bundle(), storage);
} finally {
  rmSync(storage, { recursive: true, force: true });
}
