import { sha256 } from '../../core/pack/digest.ts';
import type { KeyScope } from '../archive/workshop/workshop-calls.ts';
import { causeOf, orUnavailable } from './answer.ts';
import { HttpProblem } from './problem.ts';
import { tooMany } from './rate-limit.ts';
import type { Access, Call, Caller } from './route.ts';

/** Format of a key, `slip_<workshop>_<token>`: it names its workshop, so that nothing has to be searched. */
const KEY = /^slip_([a-z0-9][a-z0-9-]{0,38})_[A-Za-z0-9_-]{43}$/;

const NOBODY: Caller = { workshop: '', key: '', person: null, rate: undefined, secret: '' };

export const keyText = (workshop: string, token: string): string => `slip_${workshop}_${token}`;

/**
 * Identifies the caller.
 *
 * @throws HttpProblem 401 without a valid key, 403 if the key lacks the scope
 */
export async function admit(
  request: Request,
  access: Access,
  { world, later }: Pick<Call, 'world' | 'later'>,
): Promise<Caller> {
  if (access === 'public') return NOBODY;
  const secret = /^Bearer ([\x21-\x7e]+)$/i.exec(request.headers.get('Authorization') ?? '')?.[1];
  if (!secret) throw new HttpProblem('unauthorized', 'Send a key as Authorization: Bearer <key>');
  if (access === 'deployment') {
    // Digests are compared, so that the time taken reveals nothing about the secret.
    const isSame = world.adminSecret && (await sha256(secret)) === (await sha256(world.adminSecret));
    if (isSame) return NOBODY;
    throw new HttpProblem('unauthorized', 'Only the secret of the deployment opens this');
  }
  return callerWith(secret, access, { world, later });
}

async function callerWith(
  secret: string,
  scope: KeyScope,
  { world, later }: Pick<Call, 'world' | 'later'>,
): Promise<Caller> {
  const workshop = KEY.exec(secret)?.[1];
  if (!workshop) throw new HttpProblem('unauthorized', 'The key is not valid');
  const keySha256 = await sha256(secret);
  const at = world.now().toISOString();
  const ask = world.archive.workshop(workshop, (keys) => keys.authenticate(keySha256, at, world.requestsPerMinute));
  const admission = orUnavailable(await ask);
  if (!admission) throw new HttpProblem('unauthorized', 'The key is not valid');
  const { key, rate, isUseNoted } = admission;
  if (!isUseNoted)
    later(async () => {
      const noted = await world.archive.workshop(workshop, (keys) => keys.noteUse(keySha256, at));
      if (!noted.ok) world.log({ code: 'NOT_NOTED', what: 'use of a key', cause: causeOf(noted) });
    });
  if (rate.remaining < 0) throw tooMany(rate);
  if (!key.scopes.includes(scope)) throw new HttpProblem('forbidden', `The key must have the scope ${scope}`);
  return { workshop, key: key.key, person: key.person, rate, secret };
}
