import { CompactSign, calculateJwkThumbprint, exportJWK, generateKeyPair, type JSONWebKeySet } from 'jose';
import { beforeAll, describe, expect, test } from 'vitest';
import { sha256 } from '../../../worker/core/pack/digest.ts';
import { type SealKey, sealFile } from '../../../worker/core/seal/seal.ts';
import { emptySlot, type Slot, sealIn, slotAt, slotBytes, slotIn, withSeal } from '../../../worker/core/seal/slot.ts';
import { verifyFile } from '../../../worker/core/seal/verify.ts';
import { seededRandom } from '../calc/seeded-random.ts';
import { sampleFile } from './sample-file.ts';

const FACTS = {
  workshop: 'lower-meadow',
  registration: 'Q-SLM',
  pack: 'Q-SLM-P1-1',
  issue: 1,
  issuedAt: '2026-11-05T13:20:00.000Z',
  manifestSha256: 'ab'.repeat(32),
  recordSha256: 'cd'.repeat(32),
};

async function newKey(): Promise<{ key: SealKey; keys: JSONWebKeySet }> {
  const { publicKey, privateKey } = await generateKeyPair('Ed25519');
  const jwk = await exportJWK(publicKey);
  const kid = await calculateJwkThumbprint(jwk);
  return { key: { kid, privateKey }, keys: { keys: [{ ...jwk, kid, alg: 'EdDSA', use: 'sig' }] } };
}

let [ours, theirs]: Awaited<ReturnType<typeof newKey>>[] = [];
let sealed: Uint8Array;

beforeAll(async () => {
  [ours, theirs] = [await newKey(), await newKey()];
  const { file, places } = sampleFile();
  sealed = await sealFile(file, FACTS, places, (ours as { key: SealKey }).key);
});

const verdictOf = (file: Uint8Array, keys = ours?.keys as JSONWebKeySet) => verifyFile(file, keys);

describe('verifyFile()', () => {
  test('finds a sealed file genuine, with what was signed', async () => {
    const verdict = await verdictOf(sealed);
    expect(verdict).toMatchObject({ kind: 'genuine', kid: ours?.key.kid, claims: FACTS });
  });

  test('names the part that was altered', async () => {
    const text = new TextDecoder('latin1').decode(sealed);
    const forged = Uint8Array.from(text.replace('1650.3', '1650.4'), (sign) => sign.charCodeAt(0));
    expect(await verdictOf(forged)).toMatchObject({ kind: 'altered', parts: ['page 2'] });
    const longer = Uint8Array.from(text.replace('325.9', '3259.0'), (sign) => sign.charCodeAt(0));
    const verdict = await verdictOf(longer);
    expect(verdict).toMatchObject({ kind: 'altered' });
    expect(verdict.kind === 'altered' && verdict.parts.at(-1)).toContain('instead of');
  });

  test('finds a sealed file altered behind which an empty slot was written, or several', async () => {
    const text = new TextDecoder('latin1').decode(sealed);
    const slot = `stream\n${new TextDecoder().decode(emptySlot(1900))}\nendstream\n`;
    for (const behind of [slot, slot + slot]) {
      const file = Uint8Array.from(text + behind, (sign) => sign.charCodeAt(0));
      expect(await verdictOf(file)).toMatchObject({ kind: 'altered', claims: FACTS, kid: ours?.key.kid });
      expect(await verdictOf(file, theirs?.keys)).toEqual({ kind: 'not-sealed' });
    }
  });

  test.each([
    [{ format: 'slipmark-seal/2' }],
    [{ format: 'slipmark-seal/2', ...FACTS }],
    [{ format: 'slipmark-seal/2', ...FACTS, files: 'x', parts: [] }],
    [{ format: 'slipmark-seal/2', ...FACTS, files: [null], parts: [] }],
    [{ format: 'slipmark-seal/2', ...FACTS, files: [], parts: [] }],
    [{ format: 'slipmark-seal/1', ...FACTS, pdf: 7, parts: 1 }],
    [
      {
        format: 'slipmark-seal/2',
        ...FACTS,
        files: [{ name: 'x', sha256: 'y', bytes: 1 }],
        parts: [[1, -5, 1e12, 'x']],
      },
    ],
    [null],
    [7],
  ])('finds a seal false whose claims are not of their form, also by a key of the set: %j', async (claims) => {
    const { file, places } = sampleFile();
    const seal = await new CompactSign(new TextEncoder().encode(JSON.stringify(claims)))
      .setProtectedHeader({ alg: 'EdDSA', kid: ours?.key.kid ?? '', typ: 'slipmark-seal' })
      .sign((ours as { key: SealKey }).key.privateKey);
    expect(await verdictOf(withSeal(file, places.slot, seal))).toEqual({ kind: 'seal-false' });
  });

  test('finds the key of a seal unknown where what it is given is no set of keys', async () => {
    for (const keys of [{}, { keys: null }, { keys: [null] }])
      expect(await verdictOf(sealed, keys as unknown as JSONWebKeySet)).toEqual({
        kind: 'key-unknown',
        kid: ours?.key.kid,
      });
  });

  test('knows no seal by another key, and no seal where there is none', async () => {
    expect(await verdictOf(sealed, theirs?.keys)).toEqual({ kind: 'key-unknown', kid: ours?.key.kid });
    expect(await verdictOf(sampleFile().file)).toEqual({ kind: 'not-sealed' });
    expect(await verdictOf(new Uint8Array())).toEqual({ kind: 'not-sealed' });
  });

  test('goes by the thumbprint of a key (RFC 7638), whatever a set of keys calls it', async () => {
    const [mine] = ours?.keys.keys ?? [];
    const [other] = theirs?.keys.keys ?? [];
    // Sealed with another key under the name of ours, and handed out with a set that calls the other key ours.
    const { file, places } = sampleFile();
    const forged = await sealFile(file, FACTS, places, { ...(theirs as { key: SealKey }).key, kid: mine?.kid ?? '' });
    const swapped = { keys: [{ ...other, kid: mine?.kid ?? '' }] } as JSONWebKeySet;
    expect(await verdictOf(forged, swapped)).toEqual({ kind: 'key-unknown', kid: mine?.kid });
    expect(await verdictOf(forged)).toEqual({ kind: 'seal-false' });
    // A set that gives no names, or one key that is none, proves as well.
    const nameless = {
      keys: [
        { kty: 'OKP', crv: 'Ed25519' },
        { ...mine, kid: undefined },
      ],
    } as unknown as JSONWebKeySet;
    expect(await verdictOf(sealed, nameless)).toMatchObject({ kind: 'genuine', kid: mine?.kid });
  });

  test('reads claims of every form: the first has one file, later ones every PDF of the pack', async () => {
    const { key } = ours as { key: SealKey };
    const { file } = sampleFile();
    const slot = slotIn(file) as Slot;
    const whole = { sha256: await sha256(file), bytes: file.length };
    const signed = async (claims: object): Promise<Uint8Array> => {
      const seal = await new CompactSign(new TextEncoder().encode(JSON.stringify({ ...FACTS, parts: [], ...claims })))
        .setProtectedHeader({ alg: 'EdDSA', kid: key.kid, typ: 'slipmark-seal' })
        .sign(key.privateKey);
      return withSeal(file, slot, seal);
    };
    const first = await signed({ format: 'slipmark-seal/1', pdf: whole });
    expect(await verdictOf(first)).toMatchObject({
      kind: 'genuine',
      claims: { files: [{ name: 'pack.pdf', ...whole }] },
    });
    const other = { name: 'owner.pdf', sha256: 'ef'.repeat(32), bytes: 10 };
    const files = [other, { name: 'documents.pdf', ...whole }];
    const second = await signed({ format: 'slipmark-seal/2', files, later: 'members are let be' });
    expect(await verdictOf(second)).toMatchObject({ kind: 'genuine', claims: { files } });
    expect(await verdictOf(await signed({ format: 'slipmark-seal/2', files: [other] }))).toMatchObject({
      kind: 'altered',
    });
    expect(await verdictOf(await signed({ format: 'slipmark-seal/3', files }))).toEqual({ kind: 'seal-false' });
  });

  test('is not fooled by a seal taken over from another file', async () => {
    const { file } = sampleFile();
    const slot = slotIn(sealed);
    const other = file.slice();
    other.set(sealed.subarray(slot?.start, slot?.end), slotIn(file)?.start);
    other[20] = 0x30;
    expect(await verdictOf(other)).toMatchObject({ kind: 'altered', parts: ['page 1'] });
  });

  test('tells every change of a single byte, the seal and its padding included', async () => {
    const { uniform } = seededRandom(7);
    const below = (limit: number): number => Math.floor((uniform(1) + 1) * 0.499_999 * limit);
    const slot = slotIn(sealed) ?? { start: 0, end: 0 };
    // Every byte of the signature once, whose last figure has bits that carry nothing, and as many places elsewhere.
    const signatureEnd = slot.start + sealIn(sealed, slot).length;
    const places = Array.from({ length: 100 }, (_, index) => signatureEnd - 1 - index);
    while (places.length < 5000) places.push(below(sealed.length));
    for (const place of places) {
      const changed = sealed.slice();
      changed[place] = ((changed[place] ?? 0) + 1 + below(255)) % 256;
      expect((await verdictOf(changed)).kind, `byte ${place}`).not.toBe('genuine');
    }
  });
});

// What a slot begins with, with room for a seal, as a photograph or a paper may hold it.
const OPENING = `stream\nslipmark-seal/1 ${' '.repeat(1800)}`;

describe('a file that was handed in with what a slot begins with in it', () => {
  test('is sealed and found genuine, and altered where it is', async () => {
    const { file, places } = sampleFile(OPENING.repeat(3));
    const brought = await sealFile(file, FACTS, places, (ours as { key: SealKey }).key);
    expect(await verdictOf(brought)).toMatchObject({ kind: 'genuine', claims: FACTS });
    const altered = brought.slice();
    altered[60] = 0x21;
    expect(await verdictOf(altered)).toMatchObject({ kind: 'altered' });
  });

  test('cannot take the seal over, neither before the slot nor after it', async () => {
    const { file, places } = sampleFile(OPENING);
    const genuine = await sealFile(file, FACTS, places, (ours as { key: SealKey }).key);
    const seal = sealIn(genuine, places.slot);
    const moved = file.slice();
    moved.set(Buffer.from(seal), Buffer.from(file).indexOf(OPENING) + 'stream\nslipmark-seal/1 '.length);
    expect(await verdictOf(moved)).toEqual({ kind: 'not-sealed' });
    const appended = new Uint8Array(Buffer.concat([genuine, Buffer.from(`stream\nslipmark-seal/1 ${seal}\n`)]));
    expect((await verdictOf(appended)).kind).toBe('altered');
  });
});

describe('sealFile()', () => {
  test('gives the same bytes for the same file and key', async () => {
    const { file, places } = sampleFile();
    const again = await sealFile(file, FACTS, places, (ours as { key: SealKey }).key);
    expect(again).toEqual(sealed);
  });

  test('has room for the digests of thousands of pages', async () => {
    const pages = 3700;
    const slot = emptySlot(slotBytes(pages));
    const before = 'stream\n';
    const file = new Uint8Array(Buffer.concat([Buffer.from(before), slot, Buffer.from('\nendstream')]));
    const at = { start: before.length, end: before.length + slot.length };
    // Places as in a file of a hundred million bytes.
    const far = 123_456_789;
    const parts = Array.from({ length: pages }, (_, i) => ({
      name: `page ${i + 1}`,
      start: far + i,
      end: far + i + 9,
    }));
    const key = (ours as { key: SealKey }).key;
    const full = await sealFile(file, FACTS, { slot: slotAt(at), parts }, key);
    expect(await verdictOf(full)).toMatchObject({ kind: 'genuine' });
  });

  test('refuses a file without a slot', async () => {
    const none = new TextEncoder().encode('%PDF-1.7');
    const places = { slot: { start: 3, end: 8 }, parts: [] };
    await expect(sealFile(none, FACTS, places, (ours as { key: SealKey }).key)).rejects.toThrow('slot');
  });

  test('refuses a file in which a reader would find another slot', async () => {
    const { file, places } = sampleFile();
    const more = new Uint8Array(Buffer.concat([file, Buffer.from(OPENING)]));
    await expect(sealFile(more, FACTS, places, (ours as { key: SealKey }).key)).rejects.toThrow('slot');
  });
});
