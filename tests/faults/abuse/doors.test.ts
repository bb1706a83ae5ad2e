import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROUTES } from '../../../worker/edge/http/routes.ts';
import { RUNS } from '../../property-runs.ts';
import { smallRecord, WEIGHED } from '../small-visit.ts';
import { type Abused, abused, type Sent } from './abused.ts';
import { type Chance, chanceOf } from './chance.ts';
import { NASTY_TEXT, NASTY_VALUES } from './nasty.ts';

const SEED = Number(RUNS.seed);
const VISIT = '/v1/aircraft/Q-ABU/visits/v1';
const PACK = '/v1/packs/Q-ABU-P1-1';

let service: Abused;
let token = '';

/** A workshop with a visit, a pack and a link, so that what is mistreated is really there. */
beforeAll(async () => {
  service = await abused();
  const send = async (path: string, sent: Sent) => {
    const response = await service.ask(path, sent);
    expect(response.ok, await response.clone().text()).toBe(true);
    return response;
  };
  await send(VISIT, { method: 'PUT', body: JSON.stringify(smallRecord('Q-ABU', 'Mistreated', WEIGHED)) });
  const assessment = await send(`${VISIT}/assessment`, { method: 'GET' });
  const headers = { 'If-Match': assessment.headers.get('ETag') ?? '' };
  const body = JSON.stringify({ by: 'rufus', knowsOfNoHazard: true });
  await send(`${VISIT}/release`, { method: 'POST', body, headers });
  const link = await send(`${PACK}/links`, { method: 'POST', body: JSON.stringify({ audience: 'owner' }) });
  token = new URL(((await link.json()) as { url: string }).url).pathname.slice(3);
});

afterAll(() => {
  console.log(`${service.sent} requests at every door, seed ${SEED}`);
});

const REAL: Readonly<Record<string, () => string>> = {
  registration: () => 'Q-ABU',
  visit: () => 'v1',
  pack: () => 'Q-ABU-P1-1',
  document: () => 'weighing-report',
  token: () => token,
  workshop: () => 'abuse',
};

/** A part of an address, as a browser, a client or somebody at a terminal would write it. */
function segment(chance: Chance): string {
  const text = chance.oneOf(NASTY_TEXT);
  const forms = [
    () => encodeURIComponent(text.toWellFormed()),
    () => encodeURIComponent(encodeURIComponent(text.toWellFormed())),
    () => text,
    () =>
      chance.oneOf([
        '%00',
        '%2e%2e%2f',
        '..%5c',
        '%c0%ae',
        '%ff',
        '%',
        '%zz',
        '%u0041',
        ';a=b',
        'q-abu',
        'Q-ABU%20',
        'Ｑ-ABU',
      ]),
    () => chance.oneOf(['A', '-', '%2F', '../', 'Q-']).repeat(chance.integer(1, 3_000)),
  ];
  return chance.oneOf(forms)();
}

/** The address of a route, its parameters real or spoiled. */
function address(path: string, chance: Chance, spoilt: number): string {
  return path.replaceAll(/\{(\w+)\}/g, (_, name: string) =>
    chance.isLucky(spoilt) ? segment(chance) : (REAL[name]?.() ?? segment(chance)),
  );
}

const BODIED = ['POST', 'PUT', 'PATCH'];

/** Any JSON, made of the fields that calls have and values that they have not. */
function strangeBody(chance: Chance): string {
  const names = [
    'by',
    'knowsOfNoHazard',
    'audience',
    'days',
    'reason',
    'label',
    'scopes',
    'id',
    'name',
    'pdfSha256',
    'person',
    'x',
  ];
  const value = () => chance.oneOf(chance.isLucky(0.5) ? NASTY_VALUES : NASTY_TEXT);
  const fields = Array.from({ length: chance.integer(0, 5) }, () => [chance.oneOf(names), value()] as const);
  const body = chance.isLucky(0.1) ? value() : Object.fromEntries(fields);
  const text = JSON.stringify(body) ?? '';
  return chance.isLucky(0.1) ? text.slice(0, chance.integer(0, text.length)) : text;
}

/** The keys of the workshop must outlive the test. */
const isAllowed = ([method, path]: (typeof ROUTES)[number]): boolean =>
  !(method === 'DELETE' && path === '/v1/keys/{key}');

const bodyFor = (method: string, chance: Chance): { body?: string } =>
  BODIED.includes(method) ? { body: strangeBody(chance) } : {};

describe('every door is knocked at', () => {
  test('with spoiled addresses', async () => {
    const chance = chanceOf(SEED);
    for (let index = 0; index < 5_000; index++) {
      const [method, path] = chance.oneOf(ROUTES.filter(isAllowed));
      const tried = chance.isLucky(0.1)
        ? chance.oneOf(['GET', 'PUT', 'POST', 'DELETE', 'PATCH', 'HEAD', 'OPTIONS'])
        : method;
      const query = chance.isLucky(0.3)
        ? `?${chance.oneOf(['limit', 'after', 'paper', '__proto__', 'a'])}=${segment(chance)}`
        : '';
      await service.send(address(path, chance, 0.7) + query, { method: tried, ...bodyFor(tried, chance) });
    }
  });

  test('with strange bodies', async () => {
    const chance = chanceOf(SEED + 1);
    for (let index = 0; index < 3_000; index++) {
      const [method, path] = chance.oneOf(ROUTES.filter((route) => isAllowed(route) && BODIED.includes(route[0])));
      const headers: Record<string, string> = chance.isLucky(0.5) ? { 'If-Match': '*' } : {};
      if (method === 'PATCH') headers['Content-Type'] = 'application/merge-patch+json';
      await service.send(address(path, chance, 0), { method, ...bodyFor(method, chance), headers });
    }
  });

  test('with strange headers', async () => {
    const chance = chanceOf(SEED + 2);
    const names = [
      'If-Match',
      'If-None-Match',
      'If-Range',
      'Range',
      'Accept',
      'Accept-Language',
      'Content-Type',
      'Content-Encoding',
    ];
    const others = ['Content-Length', 'Idempotency-Key', 'Authorization', 'Cookie', 'X-Forwarded-Host', 'Expect'];
    const values = [
      'bytes=0-',
      'bytes=-1',
      'bytes=9-1',
      'bytes=0-0,5-6',
      'bytes=-0',
      'bytes=99999999999999999999-',
      '"',
      '""',
      'W/"x"',
      '*',
    ];
    const more = [
      '*/*;q=NaN',
      'text/html;q=1e999',
      ',,,',
      ';;q=',
      'gzip',
      'application/json; charset=utf-16',
      'Bearer',
      'Bearer x',
      'Basic eA==',
    ];
    for (let index = 0; index < 3_000; index++) {
      const [method, path] = chance.oneOf(ROUTES.filter(isAllowed));
      const headers: Record<string, string> = {};
      for (let count = chance.integer(1, 3); count > 0; count--) {
        const value = chance.oneOf(chance.isLucky(0.5) ? [...values, ...more] : NASTY_TEXT);
        // What no client can put on the wire is tried over a socket.
        if (/^[\t\x20-\x7e\x80-\xff]*$/.test(value)) headers[chance.oneOf([...names, ...others])] = value;
      }
      await service.send(address(path, chance, 0), { method, ...bodyFor(method, chance), headers });
    }
  });
});

test('what was there before is there after', async () => {
  const pack = (await (await service.ask(PACK, { method: 'GET' })).json()) as { pack: string };
  expect(pack.pack).toBe('Q-ABU-P1-1');
  const page = await service.ask(`/p/${token}`, { method: 'GET' });
  expect(page.status).toBe(200);
});
