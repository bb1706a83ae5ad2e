import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Pack, type Slipmark, slipmark, type VisitRecord } from '../../../worker/client/client.ts';
import { bundle } from '../../../worker/local/service/bundle.ts';
import { putDemo } from '../../../worker/local/service/demo.ts';
import { type Embedded, startEmbedded } from '../../../worker/local/service/embedded.ts';
import { freePort } from '../../../worker/local/service/free-port.ts';
import { readFixture } from '../../read-fixture.ts';

const ADMIN_SECRET = 'secret-of-the-moving-test';

/** A deployment with storage of its own, spoken to with the first key of its workshop. */
export interface Deployment {
  origin: string;
  client: Slipmark;
  key: string;
}

/** An old deployment with a past and a new, empty one, of a workshop of the same name. */
export interface TwoDeployments {
  old: Deployment;
  fresh: Deployment;
  /** For files. */
  folder: string;
  /** Another workshop of the new deployment. */
  stranger: Slipmark;
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
  const old = deployment(oldOrigin, key ?? '');
  await giveItAPast(old.client);
  const freshOrigin = await start('fresh');
  const keys = [await newWorkshop(freshOrigin, 'demo'), await newWorkshop(freshOrigin, 'stranger')] as const;
  return {
    old,
    fresh: deployment(freshOrigin, keys[0]),
    stranger: deployment(freshOrigin, keys[1]).client,
    folder,
    async stop() {
      for (const service of services) await service.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

const deployment = (origin: string, key: string): Deployment => ({ origin, client: slipmark({ origin, key }), key });

async function newWorkshop(origin: string, id: string): Promise<string> {
  const { body } = await slipmark({ origin, key: ADMIN_SECRET }).createWorkshop({ body: { id, name: 'A workshop' } });
  return body.key.secret;
}

/** Visit whose record names the standing file. */
export const SMALL = { registration: 'Q-SLM', visit: 'tyre' };

const DEMO = { registration: 'Q-SLM', visit: 'avionics-and-service' };

/** A second issue of the demo pack; the first withdrawn; an aircraft whose visit is still open. */
async function giveItAPast(client: Slipmark): Promise<void> {
  await releaseAgain(client, { workshop: { name: 'Lower Meadow Aircraft, Hangar 2' } });
  const withdrawal = { by: 'Jonas Veldt', reason: 'Issued under the old name of the workshop' };
  await client.withdrawPack({ pack: 'Q-SLM-P1-1', body: withdrawal });
  const body = readFixture('visits/weighing-only') as VisitRecord;
  await client.putVisit({ registration: 'Q-WGT', visit: 'weighing', body });
  const { people, visit } = (await client.getVisit(DEMO)).body;
  const { record } = (await client.getNext({ registration: 'Q-SLM' })).body;
  const small = { ...record, visit, people } as unknown as VisitRecord;
  await client.putVisit({ ...SMALL, body: small });
  const jonas = people.find(({ id }) => id === 'jonas');
  if (!jonas) throw new Error('The demo must have jonas');
  const { name, capacity, authorisation: licence = null, scope, validUntil: until = null } = jonas;
  await client.putPerson({ person: 'jonas', body: { name, capacity, licence, scope, from: null, until } });
}

/** Amends the visit of the demo and releases it. */
export async function releaseAgain(client: Slipmark, patch: Partial<VisitRecord>): Promise<Pack> {
  const before = await client.getVisit(DEMO);
  const reasonForIssue = `Amended: ${JSON.stringify(patch).slice(0, 100)}`;
  const release = before.body.release && { ...before.body.release, reasonForIssue };
  await client.putVisit({ ...DEMO, body: { ...before.body, ...patch, release }, ifMatch: before.etag });
  const assessment = await client.getAssessment(DEMO);
  const body = { by: 'jonas', knowsOfNoHazard: true };
  const released = await client.releaseVisit({ ...DEMO, body, ifMatch: assessment.etag });
  return released.body;
}
