import * as z from 'zod';
import { LIMITS } from '../../../core/limits.ts';
import { sha256 } from '../../../core/pack/digest.ts';
import { IDENTIFIER, WORKSHOP } from '../../../core/patterns.ts';
import { type AddKey, KEY_SCOPES } from '../../archive/workshop/workshop-calls.ts';
import { keyText } from '../access.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { printableLine } from '../printable-line.ts';
import { HttpProblem } from '../problem.ts';
import { requestBody } from '../request-body.ts';
import type { Call, Operation } from '../route.ts';
import * as schemas from '../schemas.ts';

const WorkshopRequest = z.strictObject({
  id: z
    .string()
    .regex(WORKSHOP)
    .meta({ description: 'Lower-case letters, digits and hyphens', examples: ['lower-meadow'] }),
  name: printableLine().meta({
    description: 'Name printed with the seal: Latin letters and the signs that a pack can print',
    examples: ['Lower Meadow Aviation'],
  }),
});

const KeyRequest = z.strictObject({
  label: z.string().min(1).max(LIMITS.lineLength).meta({ description: 'Where the key is used' }),
  scopes: z.array(z.enum(KEY_SCOPES)).min(1).max(KEY_SCOPES.length),
  person: z
    .string()
    .regex(IDENTIFIER)
    .optional()
    .meta({
      description: 'Person who holds the key, as named in records: only that person can release with it',
      examples: ['jonas'],
    }),
});

const BODY_PROBLEMS = ['malformed-json', 'body-too-large', 'unsupported-media-type', 'request-not-valid'] as const;

/** Creates a key: its text, shown only once, and its stored form. */
async function newKey({ world }: Call, workshop: string, rights: Pick<AddKey, 'label' | 'scopes' | 'person'>) {
  const secret = keyText(workshop, world.newToken());
  const key: AddKey = { ...rights, keySha256: await sha256(secret), at: world.now().toISOString() };
  return { secret, key };
}

const NEVER_KEPT = { 'Cache-Control': 'no-store' } as const;

export const createWorkshop: Operation = {
  id: 'createWorkshop',
  summary: 'Create a workshop with its first key',
  description: 'Requires the secret of the deployment.',
  body: { type: 'application/json', description: 'The workshop', schema: WorkshopRequest },
  answers: {
    201: {
      description: 'The workshop and its first key, which may do everything',
      content: { 'application/json': z.object({ id: z.string(), name: z.string(), key: schemas.NewKey }) },
    },
  },
  problems: ['workshop-exists', ...BODY_PROBLEMS],
  async handle(call) {
    const { id, name } = await requestBody(call.request, WorkshopRequest);
    const { secret, key } = await newKey(call, id, { label: 'first key', scopes: [...KEY_SCOPES], person: null });
    const asking = { mayBegin: true };
    const outcome = orUnavailable(
      await call.world.archive.workshop(id, (workshop) => workshop.create(name, key), asking),
    );
    if (outcome.kind === 'exists') throw new HttpProblem('workshop-exists', `There is a workshop ${id} already`);
    call.world.log({ code: 'WORKSHOP_CREATED', workshop: id });
    return json({ id, name, key: { ...outcome.key, secret } }, 201, NEVER_KEPT);
  },
};

export const makeKey: Operation = {
  id: 'makeKey',
  summary: 'Make a key of the workshop',
  body: { type: 'application/json', description: 'The key', schema: KeyRequest },
  answers: {
    201: { description: 'The key; its text is shown only once', content: { 'application/json': schemas.NewKey } },
  },
  problems: ['conflict', ...BODY_PROBLEMS],
  async handle(call) {
    const { label, scopes, person = null } = await requestBody(call.request, KeyRequest);
    const { workshop } = call.caller;
    const { secret, key } = await newKey(call, workshop, { label, scopes: [...new Set(scopes)], person });
    const outcome = orUnavailable(await call.world.archive.workshop(workshop, (keys) => keys.addKey(key)));
    if (outcome.kind === 'full')
      throw new HttpProblem('conflict', `A workshop may have up to ${LIMITS.workshopKeys} keys, revoked ones included`);
    call.world.log({ code: 'KEY_MADE', key: outcome.key.key });
    return json({ ...outcome.key, secret }, 201, NEVER_KEPT);
  },
};

export const rotateKey: Operation = {
  id: 'rotateKey',
  summary: 'Give a key a new text',
  description: 'The new key has the rights of the old one, which is no longer valid. A key may rotate itself.',
  answers: {
    201: { description: 'The new key; its text is shown only once', content: { 'application/json': schemas.NewKey } },
  },
  async handle(call) {
    const { key = '' } = call.params;
    const { workshop } = call.caller;
    const secret = keyText(workshop, call.world.newToken());
    const at = call.world.now().toISOString();
    const keySha256 = await sha256(secret);
    const rotated = orUnavailable(
      await call.world.archive.workshop(workshop, (keys) => keys.rotateKey(key, keySha256, at)),
    );
    const made = orNotFound(rotated, 'such key in use');
    call.world.log({ code: 'KEY_MADE', key: made.key });
    return json({ ...made, secret }, 201, NEVER_KEPT);
  },
};

export const listKeys: Operation = {
  id: 'listKeys',
  summary: 'The keys of the workshop',
  answers: { 200: { description: 'Keys', content: { 'application/json': schemas.listOf(schemas.Key) } } },
  async handle(call) {
    return json({
      items: orUnavailable(await call.world.archive.workshop(call.caller.workshop, (keys) => keys.keys())),
    });
  },
};

export const revokeKey: Operation = {
  id: 'revokeKey',
  summary: 'Revoke a key',
  description: 'A key cannot revoke itself, so that a workshop cannot lock itself out.',
  answers: { 204: { description: 'Revoked' } },
  problems: ['conflict'],
  async handle(call) {
    const { key = '' } = call.params;
    if (key === call.caller.key) throw new HttpProblem('conflict', 'A key cannot revoke itself: use another');
    const at = call.world.now().toISOString();
    const { workshop } = call.caller;
    orNotFound(
      orUnavailable(await call.world.archive.workshop(workshop, (keys) => keys.revokeKey(key, at))),
      'such key',
    );
    call.world.log({ code: 'KEY_REVOKED', key });
    return new Response(null, { status: 204 });
  },
};
