import { type Client, clientOf, jsonOf, newWorkshop, tagOf } from '../../faults/client.ts';
import { RELEASED_BY, smallRecord } from '../../faults/small-visit.ts';

/** A key has its share of requests: load takes turns over many. */
const KEYS = 60;

export const WORKSHOP = 'bench';

/** Clients with keys of their own, of one new workshop. */
export async function manyClients(origin: string, adminSecret: string): Promise<(origin: string) => Client> {
  const { key } = await newWorkshop(origin, adminSecret, WORKSHOP);
  const first = clientOf(origin, key);
  const keys = [key];
  for (let made = 1; made < KEYS; made++) {
    const body = { label: `load ${made}`, scopes: ['records', 'release', 'links'] };
    keys.push(jsonOf<{ secret: string }>(await first('/v1/keys', { method: 'POST', body })).secret);
  }
  return (at) => {
    const clients = keys.map((each) => clientOf(at, each));
    let turn = 0;
    return (path, sent) => (clients[turn++ % clients.length] ?? first)(path, sent);
  };
}

/** Amends a visit and releases it. */
export async function releaseAgain(client: Client, registration: string, visit: string, note: string): Promise<string> {
  const path = `/v1/aircraft/${registration}/visits/${visit}`;
  const before = await client(path);
  const condition: Record<string, string> =
    before.status === 200 ? { 'If-Match': tagOf(before) } : { 'If-None-Match': '*' };
  await client(path, { method: 'PUT', body: smallRecord(registration, note), headers: condition });
  const headers = { 'If-Match': tagOf(await client(`${path}/assessment`)) };
  const body = { by: RELEASED_BY, knowsOfNoHazard: true };
  const answer = await client(`${path}/release`, { method: 'POST', body, headers });
  if (answer.status !== 201) throw new Error(`A release must be sealed: ${new TextDecoder().decode(answer.bytes)}`);
  return jsonOf<{ pack: string }>(answer).pack;
}

/** @returns path of the owner's page */
export async function linkTo(client: Client, pack: string): Promise<string> {
  const answer = await client(`/v1/packs/${pack}/links`, { method: 'POST', body: { audience: 'owner' } });
  return new URL(jsonOf<{ url: string }>(answer).url).pathname;
}
