import * as z from 'zod';
import { LIMITS } from '../../../core/limits.ts';
import { WORKSHOP } from '../../../core/patterns.ts';
import { keySet, publicSealKey } from '../../../core/seal/key.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { HttpProblem } from '../problem.ts';
import { defect, requestBody } from '../request-body.ts';
import type { Operation } from '../route.ts';
import { OPEN_TO_ALL } from '../security-headers.ts';
import { takeNewKey } from '../workshop-seal.ts';

const PublishedKeys = z
  .object({ keys: z.array(z.looseObject({ kty: z.string(), kid: z.string(), alg: z.string() })) })
  .meta({ title: 'JSON Web Key Set', description: 'RFC 7517' });

export const getSealKeys: Operation = {
  id: 'getSealKeys',
  summary: 'The present and former seal keys of a workshop',
  description: 'Keep a copy: with it a pack can be verified offline, for as long as the file lasts.',
  answers: {
    200: { description: 'Public keys, the present one first', content: { 'application/json': PublishedKeys } },
  },
  async handle(call) {
    const { workshop = '' } = call.params;
    const keys = WORKSHOP.test(workshop)
      ? orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.sealKeys()))
      : null;
    const headers = { 'Cache-Control': 'public, max-age=300', ...OPEN_TO_ALL };
    return json(keySet(orNotFound(keys, 'such workshop')), 200, headers);
  },
};

export const rotateSealKey: Operation = {
  id: 'rotateSealKey',
  summary: 'Seal with a new key from now on',
  description: 'Packs sealed before stay valid: their key stays published.',
  answers: {
    201: { description: 'All public keys, the new one first', content: { 'application/json': PublishedKeys } },
  },
  async handle(call) {
    const { workshop } = call.caller;
    const ask = async () =>
      orNotFound(
        orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.sealKeys())),
        'such workshop',
      );
    const inUse = (await ask()).find(({ retiredAt }) => retiredAt === null);
    const { kid } = await takeNewKey(call, inUse?.kid ?? null);
    call.world.log({ code: 'SEAL_KEY_TAKEN', kid });
    return json(keySet(await ask()), 201);
  },
};

const PublicKey = z
  .strictObject({
    kty: z.literal('OKP'),
    crv: z.literal('Ed25519'),
    x: z.string().regex(/^[A-Za-z0-9_-]{43}$/),
    kid: z.string().regex(/^[A-Za-z0-9_-]{43}$/),
    alg: z.literal('EdDSA').optional(),
    use: z.literal('sig').optional(),
  })
  .meta({ title: 'Public key' });

const RetiredKeys = z.strictObject({ keys: z.array(PublicKey).max(LIMITS.takenOverKeys) });

export const takeOverSealKeys: Operation = {
  id: 'takeOverSealKeys',
  summary: 'Import the public keys of an earlier deployment',
  isRepeatable: true,
  description:
    'From its keys.json. They verify the packs that they sealed and seal nothing here. Only before the workshop seals with its own key.',
  body: { type: 'application/json', description: 'Public keys', schema: RetiredKeys },
  answers: { 200: { description: 'All public keys', content: { 'application/json': PublishedKeys } } },
  problems: ['conflict', 'malformed-json', 'body-too-large', 'unsupported-media-type', 'request-not-valid'],
  async handle(call) {
    const { keys } = await requestBody(call.request, RetiredKeys);
    const retired = await Promise.all(keys.map(publicSealKey));
    const findings = retired.flatMap(({ kid }, index) =>
      kid === keys[index]?.kid ? [] : [defect('REQUEST_VALUE_WRONG', `/keys/${index}/kid`, `The key is named ${kid}`)],
    );
    if (findings.length > 0) throw new HttpProblem('request-not-valid', `${findings.length} defects`, { findings });
    const { workshop } = call.caller;
    const at = call.world.now().toISOString();
    const outcome = orUnavailable(
      await call.world.archive.workshop(workshop, (calls) => calls.takeOverSealKeys(retired, at)),
    );
    if (outcome.kind === 'seals-already')
      throw new HttpProblem('conflict', 'The workshop already seals with its own key: no other keys can be imported');
    call.world.log({ code: 'SEAL_KEYS_TAKEN_OVER', workshop, added: outcome.added });
    const all = orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.sealKeys()));
    return json(keySet(orNotFound(all, 'such workshop')));
  },
};
