import { CompactSign, type CryptoKey, type JWK } from 'jose';
import { sha256 } from '../pack/digest.ts';
import type { Part } from '../print/index.ts';
import { SEAL_FORMAT, type SealClaims, WHOLE_PACK } from './claims.ts';
import { type Slot, slotIn, withSeal } from './slot.ts';

/** Key with which a workshop seals. Ed25519 is deterministic, so the same file gets the same seal. */
export interface SealKey {
  /** Name of the key: its thumbprint (RFC 7638). */
  kid: string;
  privateKey: CryptoKey;
  /** Public half, with which every seal is verified before it is returned. */
  publicJwk?: JWK;
}

/** Digits of a part's digest: enough to find a change, and the digest of the whole proves it. */
const PART_FIGURES = 8;

export type SealedFacts = Omit<SealClaims, 'format' | 'files' | 'parts'>;

/**
 * Signs a file and writes the signature into its slot.
 *
 * @param file a pack with an empty slot
 * @param places position of the slot according to the writer of the file, and ranges of the file by name, none of them
 *   across the slot
 * @returns the file, with a compact JWS (RFC 7515) in its slot
 * @throws Error if a reader would not find the slot at that position, or if it is too short
 */
export async function sealFile(
  file: Uint8Array,
  facts: SealedFacts,
  { slot, parts }: { slot: Slot; parts: readonly Part[] },
  { kid, privateKey }: SealKey,
): Promise<Uint8Array> {
  if (slotIn(file)?.start !== slot.start) throw new Error('Cannot seal: the last slot of the file must be its own');
  const claims: SealClaims = {
    format: SEAL_FORMAT,
    ...facts,
    files: [{ name: WHOLE_PACK, sha256: await sha256(file), bytes: file.length }],
    parts: await Promise.all(parts.map((part) => claimOf(file, part))),
  };
  const seal = await new CompactSign(new TextEncoder().encode(JSON.stringify(claims)))
    .setProtectedHeader({ alg: 'EdDSA', kid, typ: 'slipmark-seal' })
    .sign(privateKey);
  return withSeal(file, slot, seal);
}

async function claimOf(file: Uint8Array, { name, start, end }: Part): Promise<SealClaims['parts'][number]> {
  return [name, start, end, await partDigest(file, start, end)];
}

/** Returns the start of the digest of a range of a file. */
export async function partDigest(file: Uint8Array, start: number, end: number): Promise<string> {
  return (await sha256(file.subarray(start, end))).slice(0, PART_FIGURES);
}
