import { NoKeyError, newSealKey, OtherSecretError, openSealKey } from '../../core/seal/key.ts';
import type { SealKey } from '../../core/seal/seal.ts';
import type { KeptSealKey } from '../archive/workshop/workshop-calls.ts';
import { ArchiveDamaged, orNotFound, orUnavailable } from './answer.ts';
import { HttpProblem } from './problem.ts';
import type { Call } from './route.ts';

/** Returns the seal key of the caller's workshop; created for its first seal. */
export async function sealKeyOf(call: Call): Promise<SealKey> {
  const { workshop } = call.caller;
  const keys = orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.sealKeys()));
  const [inUse] = orNotFound(keys, 'such workshop');
  const key = inUse && inUse.retiredAt === null ? inUse : await takeNewKey(call, null);
  try {
    return await openSealKey(key, sealSecretOf(call), workshop);
  } catch (error) {
    if (error instanceof NoKeyError) throw new ArchiveDamaged(`seal key ${key.kid}`, TAKE_ANOTHER);
    if (!(error instanceof OtherSecretError)) throw error;
    throw new HttpProblem(
      'unavailable',
      `The seal key of the workshop cannot be opened. Either it is kept under another SLIPMARK_SEAL: set that again. Or what is kept of it is damaged. ${TAKE_ANOTHER}`,
    );
  }
}

const TAKE_ANOTHER = 'If it cannot be had back from a back-up, take a new key: POST /v1/seal-keys';

/** Returns the name of a workshop in the deployment. */
export async function workshopName({ world }: Call, workshop: string): Promise<string> {
  return orNotFound(
    orUnavailable(await world.archive.workshop(workshop, (calls) => calls.displayName())),
    'such workshop',
  );
}

/** Replaces the seal key that the caller knows by a new one. */
export async function takeNewKey(call: Call, inPlaceOf: string | null): Promise<KeptSealKey> {
  const { workshop } = call.caller;
  const key = { ...(await newSealKey(sealSecretOf(call), workshop)), createdAt: call.world.now().toISOString() };
  return orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.takeSealKey(key, inPlaceOf)));
}

function sealSecretOf({ world }: Call): string {
  if (world.sealSecret) return world.sealSecret;
  throw new HttpProblem('unavailable', 'The deployment lacks SLIPMARK_SEAL, the secret that seal keys are kept under');
}
