import {
  base64url,
  calculateJwkThumbprint,
  compactVerify,
  createLocalJWKSet,
  decodeProtectedHeader,
  errors,
  type JSONWebKeySet,
} from 'jose';
import { sha256 } from '../pack/digest.ts';
import { claimsIn, type SealClaims } from './claims.ts';
import { partDigest } from './seal.ts';
import { type Slot, sealIn, slotBefore, slotIn, withSeal } from './slot.ts';

/** Result of the verification of a file. Only the archive knows if it is still the newest issue. */
export type Verdict =
  /** `kid` is the thumbprint (RFC 7638) of the key, calculated from the key itself. */
  | { kind: 'genuine'; claims: SealClaims; kid: string }
  /** The seal is valid and the file was changed. `parts` names the differences, as far as they can be located. */
  | { kind: 'altered'; claims: SealClaims; kid: string; parts: string[] }
  /** No seal, or one not signed by a key of the set. */
  | { kind: 'not-sealed' }
  | { kind: 'key-unknown'; kid: string }
  | { kind: 'seal-false' };

/**
 * Checks a file with its own seal and the published keys of the workshop; offline.
 *
 * @param file any bytes
 */
export async function verifyFile(file: Uint8Array, keys: JSONWebKeySet): Promise<Verdict> {
  const slot = slotIn(file);
  const seal = slot ? sealIn(file, slot) : '';
  if (!slot || seal === '') return slot ? behindEmptySlot(file, slot, keys) : { kind: 'not-sealed' };
  const signed = await claimsOf(seal, keys);
  if (signed.kind !== 'signed') return signed;
  const { claims, kid } = signed;
  const empty = withSeal(file, slot, '');
  const digest = await sha256(empty);
  const isSealed = claims.files.some((sealed) => sealed.bytes === empty.length && sealed.sha256 === digest);
  if (isSealed) return { kind: 'genuine', claims, kid };
  return { kind: 'altered', claims, kid, parts: await alteredParts(empty, claims) };
}

/** A sealed pack stays one if data is appended, even an empty slot: it is reported as altered. */
async function behindEmptySlot(file: Uint8Array, last: Slot, keys: JSONWebKeySet): Promise<Verdict> {
  let slot = slotBefore(file, last);
  while (slot && sealIn(file, slot) === '') slot = slotBefore(file, slot);
  const signed = slot && (await claimsOf(sealIn(file, slot), keys));
  if (!slot || signed?.kind !== 'signed') return { kind: 'not-sealed' };
  const { claims, kid } = signed;
  return { kind: 'altered', claims, kid, parts: await alteredParts(withSeal(file, slot, ''), claims) };
}

/** Whether a value is a set of keys (RFC 7517), with any keys in it. */
export const isKeySet = (value: unknown): value is JSONWebKeySet =>
  Array.isArray((value as { keys?: unknown } | null)?.keys);

type Signed = { kind: 'signed'; claims: SealClaims; kid: string } | Exclude<Verdict, { claims: SealClaims }>;

/** Returns the claims in a seal signed by a key of the set. */
export async function claimsOf(seal: string, keys: JSONWebKeySet): Promise<Signed> {
  if (!isCanonical(seal)) return { kind: 'seal-false' };
  try {
    const kid = kidOf(seal);
    if (kid === '') return { kind: 'seal-false' };
    const set = createLocalJWKSet(await underTheirThumbprints(keys));
    const { payload } = await compactVerify(seal, set, { algorithms: ['EdDSA'] });
    // Claims signed by a key of the set have the form of their name.
    const claims = claimsIn(JSON.parse(new TextDecoder().decode(payload)));
    return claims ? { kind: 'signed', claims, kid } : { kind: 'seal-false' };
  } catch (error) {
    if (error instanceof errors.JWKSNoMatchingKey) return { kind: 'key-unknown', kid: kidOf(seal) };
    return { kind: 'seal-false' };
  }
}

/** Replaces key names by thumbprints: a key set may come with any names. */
async function underTheirThumbprints(set: JSONWebKeySet): Promise<JSONWebKeySet> {
  const keys = isKeySet(set) ? set.keys : [];
  const named = await Promise.allSettled(keys.map(async (jwk) => ({ ...jwk, kid: await calculateJwkThumbprint(jwk) })));
  return { keys: named.flatMap((key) => (key.status === 'fulfilled' ? [key.value] : [])) };
}

/** Whether the last character of a signature has its unused bits as written: decoders ignore them. */
function isCanonical(seal: string): boolean {
  const signature = seal.slice(seal.lastIndexOf('.') + 1);
  try {
    return base64url.encode(base64url.decode(signature)) === signature;
  } catch {
    return false;
  }
}

/** Returns the thumbprint of the key that a seal names; empty if it names none. */
export function kidOf(seal: string): string {
  return String(decodeProtectedHeader(seal).kid ?? '');
}

async function alteredParts(file: Uint8Array, { parts, files: [whole] }: SealClaims): Promise<string[]> {
  const altered: string[] = [];
  for (const [name, start, end, digest] of parts)
    if ((await partDigest(file, start, end)) !== digest) altered.push(name);
  if (whole && file.length !== whole.bytes)
    return [...altered, `length: ${file.length} bytes instead of ${whole.bytes}`];
  return altered.length > 0 ? altered : ['what holds the file together: its objects, fonts or structure'];
}
