import {
  CompactEncrypt,
  calculateJwkThumbprint,
  compactDecrypt,
  errors,
  exportJWK,
  generateKeyPair,
  importJWK,
  type JSONWebKeySet,
  type JWK,
} from 'jose';
import type { SealKey } from './seal.ts';

// Private keys are wrapped with a secret of the deployment: a copy of the storage cannot sign. Retired keys stay
// published, so that old packs can still be proved.

/** The key was kept under another secret, or for another workshop, or its row is damaged; these cases are indistinguishable. */
export class OtherSecretError extends Error {}

/** The kept data is not a key, or its halves do not match. */
export class NoKeyError extends Error {}

/** A new key in the form in which it is kept. */
export interface WrappedKey {
  kid: string;
  /** JSON Web Key of the public half, as JSON. */
  publicJwk: string;
  /** The private half, encrypted: a compact JWE (RFC 7516). */
  wrapped: string;
}

/**
 * Makes a key to seal with (Ed25519, RFC 8037), its private half encrypted at once.
 *
 * @param secret of the deployment
 */
export async function newSealKey(secret: string, workshop: string): Promise<WrappedKey> {
  const { publicKey, privateKey } = await generateKeyPair('Ed25519', { extractable: true });
  const publicJwk = await exportJWK(publicKey);
  const kid = await calculateJwkThumbprint(publicJwk);
  const wrapped = await new CompactEncrypt(new TextEncoder().encode(JSON.stringify(await exportJWK(privateKey))))
    .setProtectedHeader({ alg: 'dir', enc: 'A256GCM', kid })
    .encrypt(await wrappingKey(secret, workshop));
  return { kid, publicJwk: JSON.stringify(publicJwk), wrapped };
}

/**
 * Decrypts a key for signing.
 *
 * @throws OtherSecretError if it was wrapped under another secret, or for another workshop
 * @throws NoKeyError if it is damaged
 */
export async function openSealKey(kept: WrappedKey, secret: string, workshop: string): Promise<SealKey> {
  const { kid, wrapped, publicJwk } = kept;
  const plaintext = await unwrapped(wrapped, await wrappingKey(secret, workshop));
  const jwk = JSON.parse(new TextDecoder().decode(plaintext)) as JWK;
  const privateKey = await importJWK(jwk, 'EdDSA');
  const isPair = !(privateKey instanceof Uint8Array) && (await calculateJwkThumbprint(jwk)) === kid;
  if (!isPair) throw new NoKeyError('Its private half must be that of the published one');
  return { kid, privateKey, publicJwk: JSON.parse(publicJwk) as JWK };
}

async function unwrapped(wrapped: string, key: Uint8Array): Promise<Uint8Array> {
  try {
    return (await compactDecrypt(wrapped, key)).plaintext;
  } catch (error) {
    if (error instanceof errors.JWEDecryptionFailed) throw new OtherSecretError('Kept under another secret');
    if (error instanceof errors.JOSEError) throw new NoKeyError('It is not kept in a form that can be opened');
    throw error;
  }
}

/** Returns a published key under its thumbprint (RFC 7638), independent of the name that it came with. */
export async function publicSealKey({ kty, crv, x }: { kty: string; crv: string; x: string }) {
  const jwk = { crv, kty, x };
  return { kid: await calculateJwkThumbprint(jwk), publicJwk: JSON.stringify(jwk) };
}

/** Whether a key was made here. A key from an earlier deployment has no private half here. */
export const isOwnKey = ({ wrapped }: Pick<WrappedKey, 'wrapped'>): boolean => wrapped !== '';

/** Returns the published keys of a workshop (RFC 7517). */
export function keySet(keys: readonly Omit<WrappedKey, 'wrapped'>[]): JSONWebKeySet {
  return {
    keys: keys.map(({ kid, publicJwk }) => ({ ...(JSON.parse(publicJwk) as JWK), kid, alg: 'EdDSA', use: 'sig' })),
  };
}

/** Derives one key of the deployment for each workshop (HKDF, RFC 5869). */
async function wrappingKey(secret: string, workshop: string): Promise<Uint8Array> {
  const encode = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);
  const material = await crypto.subtle.importKey('raw', encode(secret), 'HKDF', false, ['deriveBits']);
  const parameters = { name: 'HKDF', hash: 'SHA-256', salt: encode(workshop), info: encode('slipmark seal key') };
  return new Uint8Array(await crypto.subtle.deriveBits(parameters, material, 256));
}
