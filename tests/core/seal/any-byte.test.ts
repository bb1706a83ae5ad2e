import { calculateJwkThumbprint, exportJWK, generateKeyPair } from 'jose';
import { expect, test } from 'vitest';
import { seal } from '../../../worker/core/core.ts';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { verifyFile } from '../../../worker/core/seal/verify.ts';
import { brokenEntry, entryAfter, GENESIS } from '../../../worker/edge/archive/ledger/chain.ts';
import type { ChainEntry } from '../../../worker/edge/archive/ledger/ledger-calls.ts';
import { seededRandom } from '../calc/seeded-random.ts';
import { AT, assessed, attestation, FILES, PLACE, posted } from '../pack/fixture.ts';

const { uniform } = seededRandom(11);
const below = (limit: number): number => Math.floor((uniform(1) + 1) * 0.499_999 * limit);

/** A text with one character changed to another. */
function changed(text: string): string {
  const at = below(text.length);
  const other = String.fromCharCode(0x21 + ((text.charCodeAt(at) - 0x21 + 1 + below(90)) % 94));
  return text.slice(0, at) + other + text.slice(at + 1);
}

test('a change of any byte of a sealed pack or its manifest is told', { timeout: 120_000 }, async () => {
  const { publicKey, privateKey } = await generateKeyPair('Ed25519');
  const jwk = await exportJWK(publicKey);
  const kid = await calculateJwkThumbprint(jwk);
  const visit = await assessed(posted('nose-wheel-full'));
  const workshop = { id: 'lower-meadow', name: 'Lower Meadow' };
  const sealing = { workshop, key: { kid, privateKey }, by: { key: 'key-of-the-test', person: null } };
  const outcome = await seal(visit, attestation(visit), PLACE, FILES, sealing);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
  const { pdf, manifestJson, manifestSha256 } = outcome.sealed;
  const keys = { keys: [{ ...jwk, kid, alg: 'EdDSA' }] };
  expect(await verifyFile(pdf, keys)).toMatchObject({ kind: 'genuine', claims: { manifestSha256 } });
  for (let time = 0; time < 3000; time++) {
    const at = below(pdf.length);
    const kept = pdf[at] ?? 0;
    pdf[at] = (kept + 1 + below(255)) % 256;
    expect((await verifyFile(pdf, keys)).kind, `byte ${at}`).not.toBe('genuine');
    pdf[at] = kept;
  }
  expect((await verifyFile(pdf, keys)).kind).toBe('genuine');
  for (let time = 0; time < 1000; time++) expect(await sha256(changed(manifestJson))).not.toBe(manifestSha256);
});

test('a change of any character of a row of the ledger is told', { timeout: 120_000 }, async () => {
  const entries: ChainEntry[] = [];
  let head = { seq: 0, digest: GENESIS };
  for (let number = 1; number <= 8; number++) {
    const body = { visit: `v${number}`, version: number, recordSha256: await sha256(String(number)) };
    head = await entryAfter(head, { at: AT, kind: 'visit-kept', body });
    entries.push(head as ChainEntry);
  }
  expect(await brokenEntry(entries)).toBeUndefined();
  const texts = ['at', 'kind', 'body', 'previous', 'digest'] as const;
  for (let time = 0; time < 2000; time++) {
    const row = below(entries.length);
    const field = texts[below(texts.length)] ?? 'body';
    const forged = entries.map((entry, index) =>
      index === row ? { ...entry, [field]: changed(entry[field]) } : entry,
    );
    // The digest of the last row is held by whoever kept the head: a pack, an export.
    const isTold = (await brokenEntry(forged)) !== undefined || forged.at(-1)?.digest !== head.digest;
    expect(isTold, `${field} of row ${row}`).toBe(true);
  }
});
