import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundle } from '../../worker/embedded/bundle.ts';
import { putDemo } from '../../worker/embedded/demo.ts';
import { type Embedded, startEmbedded } from '../../worker/embedded/embedded.ts';
import { freePort } from '../../worker/embedded/free-port.ts';
import { type Client, clientFor } from '../../worker/embedded/moving/client.ts';
import { readFixture } from '../read-fixture.ts';

const ADMIN_SECRET = 'secret-of-the-moving-test';

/** A deployment with storage of its own, spoken to with the first key of its workshop. */
export interface Deployment {
  client: Client;
  key: string;
}

/** An old deployment with a past and a new, empty one, of a workshop of the same name. */
export interface TwoDeployments {
  old: Deployment;
  fresh: Deployment;
  /** For files. */
  folder: string;
  /** Another workshop of the new deployment. */
  stranger: Client;
  stop(): Promise<void>;
}

export async function startTwo(firstPort: number): Promise<TwoDeployments> {
  const folder = mkdtempSync(join(tmpdir(), 'slipmark-moving-'));
  const script = await bundle();
  const services: Embedded[] = [];
  const start = async (name: string): Promise<string> => {
    const port = await freePort(firstPort + 50 * services.length);
    const secrets = { adminSecret: ADMIN_SECRET, sealSecret: `seal-secret-of-${name}` };
    const service = await startEmbedded({ script, storage: join(folder, name), port, ...secrets });
    services.push(service);
    return service.origin;
  };
  const oldOrigin = await start('old');
  const { key } = await putDemo(oldOrigin, { adminSecret: ADMIN_SECRET, sealSecret: '' }, () => undefined);
  const old = { client: clientFor(oldOrigin, key), key };
  await giveItAPast(old.client);
  const freshOrigin = await start('fresh');
  const keys = [await newWorkshop(freshOrigin, 'demo'), await newWorkshop(freshOrigin, 'stranger')] as const;
  return {
    old,
    fresh: { client: clientFor(freshOrigin, keys[0]), key: keys[0] },
    stranger: clientFor(freshOrigin, keys[1]),
    folder,
    async stop() {
      for (const service of services) await service.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function newWorkshop(origin: string, id: string): Promise<string> {
  const body = { id, name: 'A workshop' };
  const answer = await clientFor(origin, ADMIN_SECRET).send('/v1/workshops', { method: 'POST', body });
  return ((await answer.json()) as { key: { secret: string } }).key.secret;
}

const DEMO = '/v1/aircraft/Q-SLM/visits/avionics-and-service';

/** A second issue of the demo pack; the first withdrawn; an aircraft whose visit is still open. */
async function giveItAPast({ send }: Client): Promise<void> {
  await releaseAgain(send, { workshop: { name: 'Lower Meadow Aircraft, Hangar 2' } });
  const withdrawal = { by: 'Jonas Veldt', reason: 'Issued under the old name of the workshop' };
  await expectOk(send('/v1/packs/Q-SLM-P1-1/withdrawal', { method: 'POST', body: withdrawal }));
  const open = { method: 'PUT', body: readFixture('visits/weighing-only') as object } as const;
  await expectOk(send('/v1/aircraft/Q-WGT/visits/weighing', open));
}

/** Amends the visit of the demo and releases it. */
export async function releaseAgain(send: Client['send'], patch: object): Promise<{ pack: string; previous: string }> {
  const before = await expectOk(send(DEMO));
  const record = { ...((await before.json()) as object), ...patch };
  const ifMatch = (tag: Response): { 'If-Match': string } => ({ 'If-Match': tag.headers.get('ETag') ?? '' });
  await expectOk(send(DEMO, { method: 'PUT', body: record, headers: ifMatch(before) }));
  const assessment = await expectOk(send(`${DEMO}/assessment`));
  const body = { by: 'jonas', knowsOfNoHazard: true };
  const released = await expectOk(send(`${DEMO}/release`, { method: 'POST', body, headers: ifMatch(assessment) }));
  return (await released.json()) as { pack: string; previous: string };
}

async function expectOk(answer: Promise<Response>): Promise<Response> {
  const response = await answer;
  if (response.ok) return response;
  throw new Error(`${new URL(response.url).pathname} answered ${response.status}: ${await response.text()}`);
}
