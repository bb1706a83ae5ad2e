import { NO_READINGS } from '../calc/open-items/readings.ts';
import { LIMITS } from '../limits.ts';
import { sha256 } from '../pack/digest.ts';
import { standingAfter } from '../pack/standing-after.ts';
import { inflate } from '../print/bytes/inflate.ts';
import { isObject } from '../record/is-object.ts';
import type { StandingProof } from '../record/standing.ts';
import type { StandingFile } from '../record/standing-file.ts';
import { claimedParts } from '../seal/claimed.ts';
import { sealIn, slotIn } from '../seal/slot.ts';
import { claimsOf } from '../seal/verify.ts';
import { dateOf } from '../units/calendar.ts';
import { assess } from './assess.ts';
import { openAfterPack } from './open-after-pack.ts';
import { keptPast, openIn, type Past } from './past.ts';

/** Standing file that follows from the sealed pack of another workshop. */
export interface ProvedFile {
  file: StandingFile;
  /** Workshop that the seal names, and the thumbprint of its key (RFC 7638). */
  sealedBy: { workshop: string; kid: string };
}

/**
 * Returns the standing file after a sealed pack, from its files alone: the key signed the seal, and the digests in it
 * are those of the files. That the key belongs to that workshop is not proved here.
 *
 * @returns undefined if something in it is not as sealed
 */
export async function provedFile(
  { pack, sha256: digest }: { pack: string; sha256: string },
  { seal, keyX, record, manifest, facts }: StandingProof,
): Promise<ProvedFile | undefined> {
  const signed = await claimsOf(seal, { keys: [{ kty: 'OKP', crv: 'Ed25519', x: keyX }] });
  if (signed.kind !== 'signed') return undefined;
  const { claims, kid } = signed;
  const isNamed = claims.pack === pack && claims.recordSha256 === digest && (await sha256(record)) === digest;
  if (!isNamed) return undefined;
  const value = jsonIn(record);
  const outcome = await assess(value, claims.issuedAt);
  if (!outcome.ok) return undefined;
  const { issuedAt, workshop } = claims;
  const sealed = { pack, issuedAt, recordSha256: digest, isWithdrawn: false };
  const past =
    (await pastInFacts(claims.manifestSha256, manifest, facts)) ??
    openAfterPack(keptPast(outcome.assessed.record.standing) ?? { open: [], readings: NO_READINGS }, value, sealed);
  const file = standingAfter(outcome.assessed, { pack, sha256: digest, date: dateOf(issuedAt) }, past);
  return { file, sealedBy: { workshop, kid } };
}

/** Returns the open items in sealed facts; undefined without facts, or if they are not those of the manifest. */
async function pastInFacts(
  manifestSha256: string,
  manifest: string | undefined,
  facts: string | undefined,
): Promise<Past | undefined> {
  if (manifest === undefined || facts === undefined || (await sha256(manifest)) !== manifestSha256) return undefined;
  const named = jsonIn(manifest);
  const of = isObject(named) && isObject(named.facts) ? named.facts.sha256 : undefined;
  return (await sha256(facts)) === of ? openIn(jsonIn(facts)) : undefined;
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/**
 * Returns the files in a sealed pack that prove its standing file, apart from the key.
 *
 * @returns undefined for a file that is not a sealed pack
 */
export function proofInPack(pdf: Uint8Array): Omit<StandingProof, 'keyX'> | undefined {
  const slot = slotIn(pdf);
  const seal = slot ? sealIn(pdf, slot) : '';
  const parts = claimedParts(seal);
  const attached = (name: string): string | undefined => {
    const part = parts.find(([of]) => of === name);
    return part && unpacked(pdf.subarray(Number(part[1]), Number(part[2])));
  };
  const [record, manifest] = [attached('record.json'), attached('manifest.json')];
  return record === undefined ? undefined : { seal, record, ...(manifest !== undefined && { manifest }) };
}

const STREAM = new TextEncoder().encode('stream\n');

/** Returns the text of a compressed stream, given its object in the file. */
function unpacked(object: Uint8Array): string | undefined {
  const at = object.findIndex((_, start) => STREAM.every((byte, index) => object[start + index] === byte));
  if (at < 0) return undefined;
  const decoder = new TextDecoder();
  let text = '';
  inflate(object.subarray(at + STREAM.length), (piece) => {
    text += decoder.decode(piece, { stream: true });
    if (text.length > LIMITS.bodyBytes) throw new Error('Cannot read the pack: its record is limited to a megabyte');
  });
  return text + decoder.decode();
}
