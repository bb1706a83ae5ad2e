import { base64url, compactVerify, createLocalJWKSet, decodeProtectedHeader, errors, type JSONWebKeySet } from 'jose';
import { sha256 } from '../pack/digest.ts';
import { SEAL_FORMAT, type SealClaims } from './claims.ts';
import { partDigest } from './seal.ts';
import { sealIn, slotIn, withSeal } from './slot.ts';

/** What a file turns out to be. Whether it is still the newest only the archive knows. */
export type Verdict =
  | { kind: 'genuine'; claims: SealClaims; kid: string }
  /** The seal is good and the file is not what was sealed. `parts` names where it differs, as far as can be told. */
  | { kind: 'altered'; claims: SealClaims; kid: string; parts: string[] }
  /** No seal, or none that is signed by a key of the set. */
  | { kind: 'not-sealed' }
  | { kind: 'key-unknown'; kid: string }
  | { kind: 'seal-false' };

/**
 * Holds a file against its own seal and the published keys of the workshop. Nothing else is asked.
 *
 * @param file any bytes
 */
export async function verifyFile(file: Uint8Array, keys: JSONWebKeySet): Promise<Verdict> {
  const slot = slotIn(file);
  const seal = slot ? sealIn(file, slot) : '';
  if (!slot || seal === '') return { kind: 'not-sealed' };
  const signed = await claimsOf(seal, keys);
  if (signed.kind !== 'signed') return signed;
  const { claims, kid } = signed;
  const empty = withSeal(file, slot, '');
  const isWhole = empty.length === claims.pdf.bytes && (await sha256(empty)) === claims.pdf.sha256;
  if (isWhole) return { kind: 'genuine', claims, kid };
  return { kind: 'altered', claims, kid, parts: await alteredParts(empty, claims) };
}

type Signed = { kind: 'signed'; claims: SealClaims; kid: string } | Exclude<Verdict, { claims: SealClaims }>;

async function claimsOf(seal: string, keys: JSONWebKeySet): Promise<Signed> {
  if (!isCanonical(seal)) return { kind: 'seal-false' };
  try {
    const { kid = '' } = decodeProtectedHeader(seal);
    const { payload } = await compactVerify(seal, createLocalJWKSet(keys), { algorithms: ['EdDSA'] });
    const claims = JSON.parse(new TextDecoder().decode(payload)) as SealClaims;
    // What a key of the set has signed has the form that goes with its name.
    return claims.format === SEAL_FORMAT ? { kind: 'signed', claims, kid } : { kind: 'seal-false' };
  } catch (error) {
    if (error instanceof errors.JWKSNoMatchingKey) return { kind: 'key-unknown', kid: kidOf(seal) };
    return { kind: 'seal-false' };
  }
}

/** The last figure of a signature has bits that decoders leave unread: none of them may be other than they were written. */
function isCanonical(seal: string): boolean {
  const signature = seal.slice(seal.lastIndexOf('.') + 1);
  try {
    return base64url.encode(base64url.decode(signature)) === signature;
  } catch {
    return false;
  }
}

function kidOf(seal: string): string {
  return String(decodeProtectedHeader(seal).kid ?? '');
}

async function alteredParts(file: Uint8Array, { parts, pdf }: SealClaims): Promise<string[]> {
  const altered: string[] = [];
  for (const [name, start, end, digest] of parts)
    if ((await partDigest(file, start, end)) !== digest) altered.push(name);
  if (file.length !== pdf.bytes) return [...altered, `length: ${file.length} bytes instead of ${pdf.bytes}`];
  return altered.length > 0 ? altered : ['what holds the file together: its objects, fonts or structure'];
}
