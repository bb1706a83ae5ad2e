import { LIMITS } from '../../core/limits.ts';
import { sha256 } from '../../core/pack/digest.ts';
import type { RequestKey } from '../archive/ledger/ledger-calls.ts';
import { base64url } from '../world.ts';
import { HttpProblem } from './problem.ts';
import type { Call } from './route.ts';

/** Returns the `Idempotency-Key` of a request, bound to its sender and its content; undefined if none was sent. */
export async function requestKeyOf({ request, url, caller }: Call, body: unknown): Promise<RequestKey | undefined> {
  const key = idempotencyKeyOf(request);
  if (key === undefined) return undefined;
  return {
    keySha256: await sha256(JSON.stringify([caller.key, key])),
    fingerprintSha256: await sha256(JSON.stringify([request.method, url.pathname, body])),
  };
}

export const keyReused = () =>
  new HttpProblem('idempotency-key-reused', 'Use a new Idempotency-Key for a request that differs from an earlier one');

/**
 * Returns the token of a new link. Under an `Idempotency-Key` it is derived from the caller's own key, so that a
 * repeated request returns the same link although only the digest of the token is kept.
 */
export async function linkToken({ request, url, caller, world }: Call): Promise<string> {
  const key = idempotencyKeyOf(request);
  if (key === undefined) return world.newToken();
  const encode = (text: string) => new TextEncoder().encode(text);
  const algorithm = { name: 'HMAC', hash: 'SHA-256' };
  const secret = await crypto.subtle.importKey('raw', encode(caller.secret), algorithm, false, ['sign']);
  const message = encode(JSON.stringify(['link', url.pathname, key]));
  return base64url(new Uint8Array(await crypto.subtle.sign('HMAC', secret, message)));
}

function idempotencyKeyOf(request: Request): string | undefined {
  const key = request.headers.get('Idempotency-Key')?.trim();
  if (key === undefined) return undefined;
  if (key.length > 0 && key.length <= LIMITS.requestKeyLength) return key;
  throw new HttpProblem('malformed-request', `Idempotency-Key must be 1 to ${LIMITS.requestKeyLength} characters`);
}
