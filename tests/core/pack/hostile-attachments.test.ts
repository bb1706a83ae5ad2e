import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { calculateJwkThumbprint, exportJWK, generateKeyPair } from 'jose';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { type AttachmentFact, assess, draftPdf, inspectAttachment, seal } from '../../../worker/core/core.ts';
import { LIMITS } from '../../../worker/core/limits.ts';
import type { Sealing } from '../../../worker/core/pipeline/seal.ts';
import { verifyFile } from '../../../worker/core/seal/verify.ts';
import { RUNS } from '../../property-runs.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { HOSTILE_FILES } from '../print/import/hostile-files.ts';
import { attachment } from '../print/import/pdf-of.ts';
import { readFile } from '../print/import/read-file.ts';
import { pageTexts } from '../print/read-back.ts';
import { posted } from './fixture.ts';

const AT = RELEASABLE_AT['weighing-only'] ?? '';
const PLACE = { pack: 'Q-WGT-P1-1', number: 1, issue: 1, visit: 'weighing', before: [] };

const ORDINARY = [
  'release-certificate.pdf',
  'data-sheet-font-not-embedded.pdf',
  'loom.jpg',
  'connector-with-alpha.png',
];
const MAKERS: Readonly<Record<string, () => Uint8Array>> = {
  ...HOSTILE_FILES,
  ...Object.fromEntries(ORDINARY.map((name) => [name, () => attachment(name)])),
};

interface HandedIn {
  sha256: string;
  bytes: Uint8Array;
  fact: AttachmentFact;
}

const known = new Map<string, Promise<HandedIn>>();

/** A file as it is after it was handed in: looked into once. */
function handedIn(name: string): Promise<HandedIn> {
  const make = async (): Promise<HandedIn> => {
    const bytes = MAKERS[name]?.() ?? new Uint8Array();
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    const inspected = await inspectAttachment(bytes);
    return { sha256, bytes, fact: inspected.ok ? { ...inspected, bytes: bytes.length } : inspected };
  };
  const found = known.get(name) ?? make();
  known.set(name, found);
  return found;
}

async function sealingKey(): Promise<{ sealing: Sealing; keys: { keys: object[] } }> {
  const { publicKey, privateKey } = await generateKeyPair('Ed25519');
  const jwk = await exportJWK(publicKey);
  const kid = await calculateJwkThumbprint(jwk);
  return {
    sealing: {
      workshop: { id: 'harrow-creek', name: 'Harrow Creek' },
      key: { kid, privateKey },
      by: { key: 'key-of-the-test', person: null },
    },
    keys: { keys: [{ ...jwk, kid, alg: 'EdDSA' }] },
  };
}

/** The weighing with files as attachments, each as what it is, and cautions about them accepted. */
async function assessedWith(files: readonly HandedIn[]) {
  const record = posted('weighing-only') as { release: { acknowledgements: object[] } };
  const attachments = files.map(({ sha256, fact }, i) => ({
    id: `A${i + 1}`,
    kind: fact.ok && fact.kind !== 'pdf' ? 'photograph' : 'paper',
    title: `File ${i + 1}`,
    sha256,
  }));
  const refused = { code: 'ATTACHMENT_REFUSED', by: 'rufus', ground: 'not-possible', reason: 'Kept in the office' };
  const acknowledgements = [...record.release.acknowledgements, refused];
  const release = files.some(({ fact }) => !fact.ok) ? { ...record.release, acknowledgements } : record.release;
  const facts = { attachments: Object.fromEntries(files.map(({ sha256, fact }) => [sha256, fact])) };
  const outcome = await assess({ ...record, attachments, release }, AT, facts);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
  return outcome.assessed;
}

const { sealing, keys } = await sealingKey();

/** Releases, and gives the verdict on what came of it; undefined where the assessment says that it cannot be released. */
async function releasedWith(names: readonly string[]): Promise<string | undefined> {
  const files = await Promise.all(names.map(handedIn));
  const assessed = await assessedWith(files);
  if (!assessed.isReleasable) return undefined;
  const fit = Object.fromEntries(files.filter(({ fact }) => fact.ok).map(({ sha256, bytes }) => [sha256, bytes]));
  const attestation = { by: 'rufus', knowsOfNoHazard: true, at: AT, read: assessed.assessmentSha256 };
  const outcome = await seal(assessed, attestation, PLACE, fit, sealing);
  if (!outcome.ok) throw new Error(`Assessed as releasable, and not released: ${JSON.stringify(outcome.findings)}`);
  const { pdf } = outcome.sealed;
  await PDFDocument.load(pdf, { updateMetadata: false });
  return (await verifyFile(pdf, keys as never)).kind;
}

describe('a pack with hostile files among its attachments', () => {
  test.each(Object.keys(MAKERS))('is released and sealed: %s', async (name) => {
    expect(await releasedWith([name])).toBe('genuine');
  });

  test('is released and sealed, or cannot be released, whatever files come together', {
    timeout: 600_000,
  }, async () => {
    const names = fc.uniqueArray(fc.constantFrom(...Object.keys(MAKERS)), { minLength: 2, maxLength: 8 });
    let released = 0;
    await fc.assert(
      fc.asyncProperty(names, async (together) => {
        const verdict = await releasedWith(together);
        expect([undefined, 'genuine']).toContain(verdict);
        released += verdict === undefined ? 0 : 1;
      }),
      { ...RUNS, numRuns: 40 },
    );
    expect(released).toBeGreaterThan(20);
  });

  test('holds so many pixels of transparent pictures, and is not released with more', async () => {
    const all = Object.keys(HOSTILE_FILES).filter((name) => name.includes('transparent'));
    expect(all.length * 10_000_000).toBeGreaterThan(LIMITS.packUnpackedPixels);
    const codes = async (names: readonly string[]): Promise<string[]> => {
      const { findings } = await assessedWith(await Promise.all(names.map(handedIn)));
      return findings.filter(({ severity }) => severity === 'blocks').map(({ code }) => code);
    };
    expect(await codes(all.slice(1))).toEqual([]);
    expect(await codes(all)).toEqual(['ATTACHMENTS_TAKE_TOO_MUCH']);
  });

  test('leaves all out of a draft that would take too much', async () => {
    const all = Object.keys(HOSTILE_FILES).filter((name) => name.includes('transparent'));
    const assessed = await assessedWith(await Promise.all([...all, 'loom.jpg'].map(handedIn)));
    expect(Object.values(assessed.attachments).filter(({ ok }) => ok)).toEqual([]);
    const { bytes } = await draftPdf(assessed, AT);
    expect((await pageTexts(bytes)).join('\n')).toContain('all files together are more than one pack can hold');
    expect((await readFile(bytes)).streams('Image')).toEqual([]);
  });
});

test('what is known of a file is small enough to be kept beside it', async () => {
  const sizes = await Promise.all(
    Object.keys(MAKERS).map(async (name) => JSON.stringify({ ...(await handedIn(name)).fact, inspection: 3 }).length),
  );
  // Where files are stored, 2 kB may be kept beside each.
  expect(Math.max(...sizes)).toBeLessThan(1900);
  const { fact } = await handedIn('forty fonts that are not embedded');
  const obstacles = fact.ok && fact.kind === 'pdf' ? fact.obstacles : [];
  expect(obstacles).toHaveLength(11);
  expect(obstacles.at(-1)).toEqual({ id: 'so-points-all', values: { count: 82 } });
});
