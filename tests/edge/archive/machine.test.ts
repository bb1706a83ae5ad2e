import { env } from 'cloudflare:workers';
import { expect, test } from 'vitest';
import { cloudWorld } from '../../../worker/edge/world.ts';
import { faultyBindings } from '../faults/faulty-bindings.ts';
import { keep, release, type TestService, testService, VISIT } from '../service.ts';

/** A service on one machine, whose disk may fail; every step of its storage is noted in order. */
async function onOneMachine() {
  const { bindings, fault } = faultyBindings();
  const machine = { isFull: false, begun: true };
  const MACHINE = {
    async fetch(url: string, init?: { body: string }) {
      const { pathname } = new URL(url);
      if (pathname !== '/settle') return new Response(null, { status: machine.begun ? 204 : 404 });
      fault.steps.push(...(JSON.parse(init?.body ?? '[]') as string[]).map((key) => `settled ${key.split('/')[0]}`));
      return machine.isFull ? new Response('ENOSPC', { status: 500 }) : new Response(null, { status: 204 });
    },
  } as unknown as Fetcher;
  const { archive } = cloudWorld({ ...bindings, MACHINE });
  const service = await testService({ world: { archive } });
  return { service, machine, fault };
}

const packsOf = async ({ call }: TestService): Promise<number> =>
  (await (await call('/v1/aircraft/Q-TST')).json<{ packs: number }>()).packs;

test('every file of a pack is written through to the disk before the ledger names it', async () => {
  const { service, fault } = await onOneMachine();
  await keep(service);
  fault.steps = [];
  await release(service);
  const { steps } = fault;
  const isPut = (step: string): boolean => step === 'bucket put';
  const isSettled = (step: string): boolean => step.startsWith('settled');
  expect(steps.filter(isSettled).length).toBe(steps.filter(isPut).length);
  expect(steps.findLastIndex(isSettled)).toBeGreaterThan(steps.findLastIndex(isPut));
  expect(steps.indexOf('ledger commit')).toBeGreaterThan(steps.findLastIndex(isSettled));
});

test('a link is written through before it is handed out', async () => {
  const { service, fault } = await onOneMachine();
  await keep(service);
  await release(service);
  fault.steps = [];
  await service.call('/v1/packs/Q-TST-P1-1/links', { method: 'POST', body: { audience: 'owner' } });
  expect(fault.steps).toContain('settled links');
});

test('nothing is sealed on a disk that cannot be written, and all is once it can', async () => {
  const { service, machine } = await onOneMachine();
  await keep(service);
  const assessment = await service.call(`${VISIT}/assessment`);
  const ask = (): Promise<Response> =>
    service.call(`${VISIT}/release`, {
      method: 'POST',
      body: { by: 'jonas', knowsOfNoHazard: true },
      headers: { 'If-Match': assessment.headers.get('ETag') ?? '' },
    });
  machine.isFull = true;
  expect((await ask()).status).toBe(503);
  expect(service.events).toContainEqual({
    code: 'ARCHIVE_UNAVAILABLE',
    cause: 'Cannot write through to the disk: ENOSPC',
  });
  expect(await packsOf(service)).toBe(0);
  machine.isFull = false;
  expect((await ask()).status).toBe(201);
  expect(await packsOf(service)).toBe(1);
});

test.each(['SQLITE_FULL', 'SQLITE_READONLY', 'SQLITE_IOERR (extended: SQLITE_IOERR_WRITE)'])(
  'a ledger whose disk answers %s refuses for now, as no fault of ours',
  async (code) => {
    const service = await testService();
    const failing = Object.assign(new Error(`attempt to write a database: ${code}`), { remote: true });
    const LEDGER = { idFromName: () => 'id', get: () => ({ overview: () => Promise.reject(failing) }) };
    const { archive } = cloudWorld({ ...env, LEDGER: LEDGER as unknown as typeof env.LEDGER });
    const over = await testService({ world: { archive }, of: service });
    expect((await over.call('/v1/aircraft/Q-TST')).status).toBe(503);
    failing.message = 'a mistake';
    expect((await over.call('/v1/aircraft/Q-TST')).status).toBe(500);
  },
);

test('an aircraft that nobody ever kept anything of is not begun by reading it', async () => {
  const { service, machine, fault } = await onOneMachine();
  machine.begun = false;
  fault.steps = [];
  for (const path of ['', '/visits', '/packs', '/due', '/log', '/visits/v1'])
    expect((await service.call(`/v1/aircraft/Q-NEW${path}`)).status, path).toBeLessThan(500);
  expect(fault.steps.filter((step) => step.startsWith('ledger'))).toEqual([]);
});
