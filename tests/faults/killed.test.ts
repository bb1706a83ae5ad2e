import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, expect, test } from 'vitest';
import { bundle } from '../../worker/local/service/bundle.ts';
import { seededRandom } from '../core/calc/seeded-random.ts';
import { workUntilKilled } from './busy-visit.ts';
import { type Client, clientOf, itemsOf, newWorkshop } from './client.ts';
import { type KillableService, SECRETS, startKillable, temporaryStorage } from './killable-service.ts';
import { keysOf, type PackAnswer, Witness } from './witness.ts';

/** Kills in all, over services side by side; every so many, Node is killed with its workerd. */
const KILLS = 200;
const SERVICES = 2;
const WHOLE_GROUP_EVERY = 10;
/** How long after its signal a kill comes at the latest. */
const LATEST_MS = 300;
const SEED = Number(process.env.SEED ?? 20_261_105);
const WORKSHOP = 'faults';

const storages: { remove(): void }[] = [];
const running = new Set<KillableService>();

afterAll(async () => {
  for (const service of running) await service.kill();
  for (const { remove } of storages) remove();
});

/** A storage on which the service is killed and started again. */
function victim(script: string, seed: number) {
  const { storage, remove } = temporaryStorage();
  storages.push({ remove });
  const random = seededRandom(seed);
  const chance = (): number => (random.uniform(1) + 1) / 2;
  const witnesses = ['Q-KA', 'Q-KB'].map((registration) => new Witness(registration));
  const start = async (): Promise<KillableService> => {
    const service = await startKillable(script, storage);
    running.add(service);
    return service;
  };
  const killed = async (service: KillableService, isWholeGroup: boolean): Promise<KillableService> => {
    if (!isWholeGroup) {
      await service.killWorkerd();
      return service;
    }
    running.delete(service);
    await service.kill();
    return start();
  };
  return { witnesses, chance, start, killed };
}

const VISITS = [
  [0, 'v1'],
  [0, 'v2'],
  [1, 'v1'],
] as const;

/** Visits worked on at once until the service is killed: soon after the start, while a release is made, or after one. */
async function workAndKill(
  client: Client,
  { witnesses, chance }: ReturnType<typeof victim>,
  kill: () => Promise<void>,
) {
  const signal = (['start', 'release-asked', 'release-acknowledged'] as const)[Math.floor(chance() * 3)];
  let begin = () => {};
  const begun = new Promise<void>((resolve) => {
    begin = resolve;
  });
  const on = (what: typeof signal): void => {
    if (what === signal) begin();
  };
  on('start');
  const visits = VISITS.flatMap(([index, visit]) =>
    witnesses.slice(index, index + 1).map((witness) => ({ witness, visit })),
  );
  const work = Promise.all(visits.map((visit) => workUntilKilled(client, { ...visit, chance, on })));
  await Promise.race([begun, work]);
  await Promise.race([pause(chance() * LATEST_MS), work]);
  await kill();
  await work;
}

async function killOverAndOver(script: string, kills: number, seed: number) {
  const ours = victim(script, seed);
  let service = await ours.start();
  const { key } = await newWorkshop(service.origin, SECRETS.admin, WORKSHOP);
  for (let done = 1; done <= kills; done++) {
    await workAndKill(clientOf(service.origin, key), ours, async () => {
      service = await ours.killed(service, done % WHOLE_GROUP_EVERY === 0);
    });
    const client = clientOf(service.origin, key);
    const keys = await keysOf(client, WORKSHOP);
    for (const witness of ours.witnesses) await witness.verify(client, keys);
  }
  return { client: clientOf(service.origin, key), witnesses: ours.witnesses };
}

/** The index follows by itself: it is asked until it has caught up. */
async function expectIndexed(client: Client, packs: readonly PackAnswer[]): Promise<void> {
  const standing = ({ pack, supersededBy }: PackAnswer): string => `${pack} ${supersededBy}`;
  const expected = packs.map(standing).sort();
  const indexed = async () => (await itemsOf<PackAnswer>(client, '/v1/packs')).map(standing).sort();
  await expect.poll(indexed, { timeout: 90_000, interval: 500 }).toEqual(expected);
}

test(`killed ${KILLS} times while amending and releasing: nothing acknowledged is lost, no pack is half`, {
  timeout: 600_000,
}, async () => {
  const script = await bundle();
  const seeds = Array.from({ length: SERVICES }, (_, index) => SEED + index);
  const ended = await Promise.all(seeds.map((seed) => killOverAndOver(script, KILLS / SERVICES, seed)));
  for (const { client, witnesses } of ended) {
    const keys = await keysOf(client, WORKSHOP);
    for (const witness of witnesses) await witness.verifyEveryByte(client, keys);
    await expectIndexed(
      client,
      witnesses.flatMap(({ packs }) => packs),
    );
  }
  const acknowledged = ended.flatMap(({ witnesses }) => witnesses.flatMap((witness) => witness.acknowledged));
  const released = acknowledged.filter(({ kind }) => kind === 'pack-sealed').length;
  const packs = ended.flatMap(({ witnesses }) => witnesses.flatMap((witness) => witness.packs)).length;
  console.log(
    `${KILLS} kills: ${acknowledged.length - released} amendments and ${released} releases acknowledged, ${packs} packs whole`,
  );
  expect(released).toBeGreaterThan(KILLS / 4);
});
