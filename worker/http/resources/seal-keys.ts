import { z } from 'zod';
import { keySet } from '../../seal/key.ts';
import { found, json, reached } from '../answer.ts';
import type { Operation } from '../route.ts';
import { takeNewKey } from '../workshop-seal.ts';

const PublishedKeys = z
  .object({ keys: z.array(z.looseObject({ kty: z.string(), kid: z.string(), alg: z.string() })) })
  .meta({ title: 'JSON Web Key Set', description: 'RFC 7517' });

const WORKSHOP = /^[a-z0-9][a-z0-9-]{0,38}$/;

export const getSealKeys: Operation = {
  summary: 'The keys that a workshop seals and has sealed its packs with',
  description: 'Keep a copy: with it a pack can be verified for as long as the file lasts, without asking anybody.',
  answers: {
    200: { description: 'Public keys, the present one first', content: { 'application/json': PublishedKeys } },
  },
  async handle(call) {
    const { workshop = '' } = call.params;
    const keys = WORKSHOP.test(workshop)
      ? reached(await call.world.archive.workshop(workshop, (calls) => calls.sealKeys()))
      : null;
    const headers = { 'Cache-Control': 'public, max-age=300', 'Access-Control-Allow-Origin': '*' };
    return json(keySet(found(keys, 'such workshop')), 200, headers);
  },
};

export const rotateSealKey: Operation = {
  summary: 'Seal with a new key from now on',
  description: 'Packs sealed before stay good: the key that sealed them stays published.',
  answers: {
    201: { description: 'All public keys, the new one first', content: { 'application/json': PublishedKeys } },
  },
  async handle(call) {
    const { workshop } = call.caller;
    const ask = async () =>
      found(reached(await call.world.archive.workshop(workshop, (calls) => calls.sealKeys())), 'such workshop');
    const inUse = (await ask()).find(({ retiredAt }) => retiredAt === null);
    const { kid } = await takeNewKey(call, inUse?.kid ?? null);
    call.world.log({ code: 'SEAL_KEY_TAKEN', kid });
    return json(keySet(await ask()), 201);
  },
};
