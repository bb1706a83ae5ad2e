import { once } from 'node:events';
import { existsSync, readFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundle } from '../../../worker/local/service/bundle.ts';
import { RUNS } from '../../property-runs.ts';
import { clientOf, jsonOf, newWorkshop } from '../client.ts';
import { type KillableService, SECRETS, startKillable, temporaryStorage } from '../killable-service.ts';
import { smallRecord } from '../small-visit.ts';
import { chanceOf } from './chance.ts';
import { expectSound } from './expect-sound.ts';
import { mutated } from './mutated.ts';
import { NASTY_TEXT } from './nasty.ts';
import { rawRequest } from './raw-request.ts';

const SEED = Number(RUNS.seed);
const MUTATED = 3_000;
const RAW = 600;
const { storage, remove } = temporaryStorage();

let service: KillableService;
let key = '';

beforeAll(async () => {
  service = await startKillable(await bundle(), storage);
  ({ key } = await newWorkshop(service.origin, SECRETS.admin, 'wire'));
});

afterAll(async () => {
  await service?.kill();
  remove();
});

/** Answers of ours carry it; what the runtime refuses before it is a request does not. */
const OURS = /\r\nX-Content-Type-Options: nosniff/i;

/** Never a failure of ours. What the runtime says to what is no HTTP is its own affair. */
function expectNoFailure(header: string, sent: string): void {
  if (OURS.test(header)) expect(header, sent).not.toMatch(/^HTTP\/1.1 5/);
  expect(header, sent).not.toMatch(/\r\nX-Injected/i);
}

/** Whatever was done to it, the service goes on for others, and it noted no failure. */
async function expectServing(): Promise<void> {
  const log = join(storage, 'service.log');
  const lines = existsSync(log) ? readFileSync(log, 'utf8').split('\n') : [];
  expect(lines.filter((line) => /UNEXPECTED_FAILURE|worker\.js/.test(line))).toEqual([]);
  const answer = await clientOf(service.origin, key)('/v1/assessments', {
    method: 'POST',
    body: smallRecord('Q-W', ''),
  });
  expect(answer.status).toBe(422);
  expect(jsonOf<{ findings: unknown[] }>(answer).findings.length).toBeGreaterThan(0);
}

const json = () => ({ Authorization: `Bearer ${key}`, 'Content-Type': 'application/json' });

const assess = (body: string | Uint8Array<ArrayBuffer>, headers: Record<string, string> = {}) =>
  fetch(`${service.origin}/v1/assessments`, {
    method: 'POST',
    headers: { ...json(), ...headers },
    body,
  });

test(`${MUTATED} mutated records over connections`, { timeout: 300_000 }, async () => {
  const chance = chanceOf(SEED);
  const record = smallRecord('Q-WIR', 'Over the wire');
  for (let index = 0; index < MUTATED; index += 10) {
    const bodies = Array.from({ length: 10 }, () => mutated(record, chance));
    await Promise.all(bodies.map(async (body) => expectSound(await assess(body), body.slice(0, 3_000))));
  }
  await expectServing();
});

describe('bodies that do not come as they should', () => {
  test('packed ones are refused unread, also where they would be huge', async () => {
    const packed = gzipSync(Buffer.alloc(50_000_000, ' '));
    for (const coding of ['gzip', 'br', 'deflate', 'zstd', 'x']) {
      const response = await assess(packed as Uint8Array<ArrayBuffer>, { 'Content-Encoding': coding });
      expect(response.status).toBe(415);
      await expectSound(response, coding);
    }
  });

  test('endless ones are refused once they are too long', async () => {
    const piece = Buffer.alloc(65_536, ' ');
    const call = request(`${service.origin}/v1/assessments`, { method: 'POST', headers: json() });
    call.on('error', () => undefined);
    const answered = once(call, 'response');
    const writing = (async () => {
      while (!call.destroyed && call.writable)
        if (!call.write(piece)) await Promise.race([once(call, 'drain'), answered]);
    })();
    const [response] = await answered;
    expect(response.statusCode).toBe(413);
    call.destroy();
    await writing.catch(() => undefined);
    await expectServing();
  });

  test('slow and abandoned ones hold nobody up', async () => {
    const calls = Array.from({ length: 40 }, () => {
      const call = request(`${service.origin}/v1/assessments`, {
        method: 'POST',
        headers: { ...json(), 'Content-Length': 1_000 },
      });
      call.on('error', () => undefined);
      call.write('{');
      return call;
    });
    for (let turn = 0; turn < 5; turn++) {
      for (const call of calls) call.write(' ');
      await expectServing();
      await pause(20);
    }
    for (const call of calls) call.destroy();
    await expectServing();
  });

  test('one that is shorter or longer than it says is no record', async () => {
    const head = `POST /v1/assessments HTTP/1.1\r\nHost: x\r\nAuthorization: Bearer ${key}\r\nContent-Type: application/json\r\n`;
    expect(await rawRequest(service.origin, `${head}Content-Length: 2\r\n\r\n{}{}GET / HTTP/1.1`)).toMatch(
      /^HTTP\/1.1 422/,
    );
    expectNoFailure(await rawRequest(service.origin, `${head}Content-Length: -1\r\n\r\n{}`), 'a length below nothing');
    const both = `${head}Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`;
    expect(await rawRequest(service.origin, both)).not.toMatch(/^HTTP\/1.1 (2|5)/);
    await expectServing();
  });
});

test(`${RAW} requests that no library would send`, { timeout: 300_000 }, async () => {
  const chance = chanceOf(SEED + 1);
  const paths = [
    '/v1/aircraft/@',
    '/v1/aircraft/@/visits/@',
    '/v1/packs/@',
    '/p/@',
    '/v1/attachments/@',
    '/@',
    '/assets/@',
  ];
  const names = [
    'If-Match',
    'Range',
    'Accept',
    'Authorization',
    'Idempotency-Key',
    'X-Forwarded-For',
    'Host',
    'Cookie',
  ];
  for (let index = 0; index < RAW; index++) {
    const path = chance.oneOf(paths).replaceAll('@', () => chance.oneOf(NASTY_TEXT));
    const header = `${chance.oneOf(names)}: ${chance.oneOf(NASTY_TEXT)}`;
    const method = chance.oneOf(['GET', 'GET', 'DELETE', 'HEAD', 'TRACE', 'CONNECT', 'PRI', 'get']);
    const text = `${method} ${path} HTTP/1.1\r\nHost: x\r\nAuthorization: Bearer ${key}\r\n${header}\r\n\r\n`;
    const answer = await rawRequest(service.origin, Buffer.from(text, chance.isLucky(0.5) ? 'utf8' : 'latin1'));
    expectNoFailure(answer, JSON.stringify(text));
  }
  await expectServing();
});
