import type { JSONWebKeySet } from 'jose';
import { expect } from 'vitest';
import { sha256 } from '../../worker/core/pack/digest.ts';
import { verifyFile } from '../../worker/core/seal/verify.ts';
import { brokenEntry } from '../../worker/edge/archive/ledger/chain.ts';
import type { ChainEntry } from '../../worker/edge/archive/ledger/ledger-calls.ts';
import { type Client, itemsOf, jsonOf } from './client.ts';

export interface PackAnswer {
  pack: string;
  supersededBy: string | null;
  pdfSha256: string;
  recordSha256: string;
  manifestSha256: string;
  files: { pdf: string; record: string; manifest: string };
}

/** A change that was asked for, with the answer where one came. */
interface Attempt {
  kind: ChainEntry['kind'];
  visit: string;
  recordSha256: string;
  answer?: PackAnswer | { version: number; recordSha256: string };
  /** Whether the chain has an entry for it. */
  isDone: boolean;
}

/** Remembers everything that was asked of one aircraft and what was acknowledged, and holds the service to it. */
export class Witness {
  readonly registration: string;
  readonly #attempts: Attempt[] = [];
  readonly #entries: ChainEntry[] = [];
  readonly #whole = new Map<string, PackAnswer>();

  constructor(registration: string) {
    this.registration = registration;
  }

  /** Notes a change before it is asked for. */
  attempt(kind: Attempt['kind'], visit: string, recordSha256: string): Attempt {
    const attempt: Attempt = { kind, visit, recordSha256, isDone: false };
    this.#attempts.push(attempt);
    return attempt;
  }

  /** How much was asked for until now. */
  get attempts(): number {
    return this.#attempts.length;
  }

  get acknowledged(): Attempt[] {
    return this.#attempts.filter(({ answer }) => answer !== undefined);
  }

  /** Packs that were found whole. */
  get packs(): PackAnswer[] {
    return [...this.#whole.values()];
  }

  /** Holds the service to all that it acknowledged, and to having done nothing that was not asked for. */
  async verify(client: Client, keys: JSONWebKeySet): Promise<void> {
    const entries = await this.#newEntries(client);
    this.#verifyAttempts(entries);
    this.#entries.push(...entries);
    await this.#verifyPacks(client, keys);
  }

  /** What follows the entries seen before must follow from them: a chain that was set back would give none. */
  async #newEntries(client: Client): Promise<ChainEntry[]> {
    const last = this.#entries.at(-1);
    const path = `/v1/aircraft/${this.registration}/ledger?after=${last ? last.seq - 1 : 0}`;
    const entries = await itemsOf<ChainEntry>(client, path);
    if (last) expect(entries.shift()).toEqual(last);
    expect(await brokenEntry(entries, last?.digest)).toBeUndefined();
    return entries;
  }

  /** Every entry was asked for, every acknowledged change has its entry, and nothing happened twice. */
  #verifyAttempts(entries: readonly ChainEntry[]): void {
    for (const { kind, body } of entries) {
      const { visit, recordSha256, ...rest } = JSON.parse(body);
      const attempt = this.#attempts.find((each) => each.kind === kind && each.recordSha256 === recordSha256);
      expect(attempt, `asked for: ${kind} ${body}`).toMatchObject({ visit, isDone: false });
      if (!attempt) continue;
      attempt.isDone = true;
      const { version, pack, pdfSha256, manifestSha256 } = rest;
      const done = kind === 'visit-kept' ? { version } : { pack, pdfSha256, manifestSha256 };
      if (attempt.answer) expect(attempt.answer).toMatchObject({ recordSha256, ...done });
    }
    expect(this.acknowledged.filter(({ isDone }) => !isDone)).toEqual([]);
  }

  async #verifyPacks(client: Client, keys: JSONWebKeySet): Promise<void> {
    const listed = await itemsOf<PackAnswer>(client, `/v1/aircraft/${this.registration}/packs`);
    const sealed = this.#entries.filter(({ kind }) => kind === 'pack-sealed').map(({ body }) => JSON.parse(body).pack);
    expect(listed.map(({ pack }) => pack).sort()).toEqual(sealed.sort());
    for (const pack of listed) {
      const before = this.#whole.get(pack.pack);
      if (before) expect({ ...pack, supersededBy: before.supersededBy ?? pack.supersededBy }).toEqual({ ...pack });
      else await expectWhole(client, pack, keys);
      this.#whole.set(pack.pack, pack);
    }
  }

  /** Every pack once more, byte for byte. */
  async verifyEveryByte(client: Client, keys: JSONWebKeySet): Promise<void> {
    for (const pack of this.#whole.values()) await expectWhole(client, pack, keys);
  }
}

/** Reads all files of a pack and holds them against their digests, and the PDF against its seal. */
async function expectWhole(client: Client, pack: PackAnswer, keys: JSONWebKeySet): Promise<void> {
  const [pdf, record, manifest] = await Promise.all(
    [pack.files.pdf, pack.files.record, pack.files.manifest].map(async (path) => (await client(path)).bytes),
  );
  const digests = await Promise.all([pdf, record, manifest].map((bytes) => sha256(bytes ?? new Uint8Array())));
  expect(digests, pack.pack).toEqual([pack.pdfSha256, pack.recordSha256, pack.manifestSha256]);
  const verdict = await verifyFile(pdf ?? new Uint8Array(), keys);
  expect(verdict).toMatchObject({ kind: 'genuine', claims: { pack: pack.pack, recordSha256: pack.recordSha256 } });
}

/** The published keys of a workshop. */
export async function keysOf(client: Client, workshop: string): Promise<JSONWebKeySet> {
  return jsonOf<JSONWebKeySet>(await client(`/v1/workshops/${workshop}/keys.json`));
}
