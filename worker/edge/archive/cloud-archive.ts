import type { AttachmentFact } from '../../core/core.ts';
import type { Bindings } from '../env.ts';
import type {
  Archive,
  Asking,
  AttachmentName,
  BlobName,
  FilePack,
  IndexedPack,
  LedgerName,
  Reached,
  Readiness,
  SealFacts,
} from './archive.ts';
import { columnJson, damageIn } from './damaged-row.ts';
import { type IndexRow, indexedPackIn } from './index-row.ts';
import { keepBlob, storedAt } from './keep-blob.ts';
import type { LedgerCalls } from './ledger/ledger-calls.ts';
import { NO_LEDGER } from './ledger/no-ledger.ts';
import { type Machine, machineBehind } from './machine.ts';
import { type Page, type PageRequest, pageOf } from './page.ts';
import { stage, staged, stagedKey, unstage } from './staging.ts';
import { NO_WORKSHOP } from './workshop/no-workshop.ts';
import type { WorkshopCalls } from './workshop/workshop-calls.ts';

// A key names the object of its workshop, and the digest of a link names its pointer in R2. So no request needs D1
// or a scan to find its ledger. If D1 is not readable, only the list of packs responds 503: an empty list would look
// like no packs, and collecting it from every ledger takes a call per aircraft. `/readyz` stays 200 and reports the
// list separately.

/** Archive in the platform's storage: Durable Objects, R2 and, for lists, D1. */
export class CloudArchive implements Archive {
  readonly #env: Bindings;
  readonly #machine: Machine;

  constructor(env: Bindings) {
    this.#env = env;
    this.#machine = machineBehind(env.MACHINE);
  }

  ledger<T>(
    { workshop, registration }: LedgerName,
    question: (ledger: LedgerCalls) => Promise<T>,
    asking: Asking = {},
  ): Promise<Reached<T>> {
    const { LEDGER } = this.#env;
    const id = LEDGER.idFromName(`${workshop}/${registration}`);
    // The stub has the methods of the object; its generated type wraps each result in ways that plain data does not
    // need.
    const calls = (isThere: boolean) => (isThere ? (LEDGER.get(id) as unknown as LedgerCalls) : NO_LEDGER);
    const object = { className: 'Ledger', id: id.toString(), name: `ledger of ${registration}` } as const;
    return this.#asked(object, asking, (isThere) => question(calls(isThere)));
  }

  workshop<T>(
    workshop: string,
    question: (calls: WorkshopCalls) => Promise<T>,
    asking: Asking = {},
  ): Promise<Reached<T>> {
    const { WORKSHOP } = this.#env;
    const id = WORKSHOP.idFromName(workshop);
    const calls = (isThere: boolean) => (isThere ? (WORKSHOP.get(id) as unknown as WorkshopCalls) : NO_WORKSHOP);
    const object = { className: 'Workshop', id: id.toString(), name: `workshop ${workshop}` } as const;
    return this.#asked(object, asking, (isThere) => question(calls(isThere)));
  }

  /** Calls an object, or its empty substitute if it was never created. Reports a damaged object. */
  async #asked<T>(
    { className, id, name }: { className: 'Ledger' | 'Workshop'; id: string; name: string },
    { mayBegin = false }: Asking,
    ask: (isThere: boolean) => Promise<T>,
  ): Promise<Reached<T>> {
    const outcome = await reached(
      async () => ask(mayBegin || (await this.#machine.hasObject(className, id))),
      (error) => isOurFault(error) && !IS_DAMAGED.test(error.message),
    );
    if (outcome.ok) return outcome;
    const place = `${name}: ${className}/${id}`;
    if (outcome.reason === 'damaged') return { ...outcome, what: `${outcome.what}, ${place}` };
    const isDamaged =
      IS_DAMAGED.test(outcome.cause) || (await this.#machine.isDamaged(className, id).catch(() => false));
    return isDamaged ? { ok: false, reason: 'damaged', what: place } : outcome;
  }

  /** Stores sealed files; R2 checks the bytes against the digest that names them. */
  putBlobs(workshop: string, blobs: ReadonlyMap<string, Uint8Array>): Promise<Reached<void>> {
    return reached(async () => {
      const { BLOBS } = this.#env;
      const keys = [...blobs.keys()].map((sha256) => blobKey(workshop, sha256));
      await Promise.all([...blobs].map(([sha256, bytes]) => keepBlob(BLOBS, blobKey(workshop, sha256), sha256, bytes)));
      await this.#machine.settle(keys);
    });
  }

  sizeOfBlob(name: BlobName): Promise<Reached<number | null>> {
    return reached(async () => {
      for (const key of placesOf(name)) {
        const object = await this.#env.BLOBS.head(key);
        if (object) return object.size;
      }
      return null;
    });
  }

  /**
   * Reads a blob, from the workshop's own place first: a replacement of a damaged file in the common place is written
   * there.
   */
  async blob(name: BlobName): Promise<Reached<Uint8Array | null>> {
    for (const key of placesOf(name)) {
      const found = await this.#whole(key, name.sha256);
      if (!found.ok || found.value) return found;
    }
    return { ok: true, value: null };
  }

  /** Reads a blob and compares it with its digest. */
  async #whole(key: string, sha256: string): Promise<Reached<Uint8Array | null>> {
    const found = await reached(() => storedAt(this.#env.BLOBS, key, sha256));
    if (!found.ok) return found;
    const { value } = found;
    if (value.kind === 'damaged') return { ok: false, reason: 'damaged', what: key };
    return { ok: true, value: value.kind === 'whole' ? value.bytes : null };
  }

  stageBlob(name: LedgerName, sha256: string, bytes: Uint8Array, seal: SealFacts | null): Promise<Reached<void>> {
    return reached(async () => {
      await stage(this.#env.BLOBS, name, { sha256, bytes, seal });
      await this.#machine.settle([stagedKey(name, sha256)]);
    });
  }

  stagedBlob(name: LedgerName, sha256: string): Promise<Reached<Uint8Array | null>> {
    return this.#whole(stagedKey(name, sha256), sha256);
  }

  async takeOverBlobs(name: LedgerName, digests: readonly string[]): Promise<Reached<void>> {
    for (const sha256 of digests) {
      const brought = await this.stagedBlob(name, sha256);
      if (!brought.ok) return brought;
      const put = brought.value && (await this.putBlobs(name.workshop, new Map([[sha256, brought.value]])));
      if (put && !put.ok) return put;
    }
    return { ok: true, value: undefined };
  }

  stagedBlobs(name: LedgerName): Promise<Reached<Map<string, SealFacts | null>>> {
    return reached(() => staged(this.#env.BLOBS, name));
  }

  unstageBlobs(name: LedgerName, digests: readonly string[]): Promise<Reached<void>> {
    return reached(() => unstage(this.#env.BLOBS, name, digests));
  }

  putAttachment(name: AttachmentName, fact: AttachmentFact, bytes: Uint8Array): Promise<Reached<void>> {
    return reached(async () => {
      const customMetadata = { fact: JSON.stringify(fact) };
      const kept = fact.ok ? { body: bytes, sha256: name.sha256 } : { body: new Uint8Array(), sha256: undefined };
      await this.#env.BLOBS.put(attachmentKey(name), kept.body, {
        customMetadata,
        ...(kept.sha256 !== undefined && { sha256: kept.sha256 }),
      });
      await this.#machine.settle([attachmentKey(name)]);
    });
  }

  attachmentFact(name: AttachmentName): Promise<Reached<AttachmentFact | null>> {
    return reached(async () => {
      const fact = (await this.#env.BLOBS.head(attachmentKey(name)))?.customMetadata?.fact;
      const damage = { what: `what is known of the file ${name.sha256}`, remedy: 'Hand the file in again' };
      return fact === undefined ? null : columnJson<AttachmentFact>(fact, isFact, damage);
    });
  }

  attachment(name: AttachmentName): Promise<Reached<Uint8Array | null>> {
    return this.#whole(attachmentKey(name), name.sha256);
  }

  pointFile(pdfSha256: string, pack: FilePack): Promise<Reached<void>> {
    return this.#point(`files/${pdfSha256}`, pack);
  }

  packOfFile(pdfSha256: string): Promise<Reached<FilePack | null>> {
    return this.#pointer<FilePack>(`files/${pdfSha256}`);
  }

  pointLink(tokenSha256: string, ledger: LedgerName): Promise<Reached<void>> {
    return this.#point(`links/${tokenSha256}`, ledger);
  }

  ledgerOfLink(tokenSha256: string): Promise<Reached<LedgerName | null>> {
    return this.#pointer<LedgerName>(`links/${tokenSha256}`);
  }

  #point(key: string, to: object): Promise<Reached<void>> {
    return reached(async () => {
      await this.#env.BLOBS.put(key, JSON.stringify(to));
      await this.#machine.settle([key]);
    });
  }

  #pointer<T>(key: string): Promise<Reached<T | null>> {
    return reached(async () => {
      const object = await this.#env.BLOBS.get(key);
      const damage = { what: `the way at ${key.slice(0, 16)}`, remedy: 'slipmark reindex restores it' };
      return object && columnJson<T>(await object.text(), isWay, damage);
    });
  }

  async readiness(): Promise<Readiness> {
    const { BLOBS, INDEX } = this.#env;
    // A separate object that keeps nothing.
    const nobodys = { workshop: '', registration: 'readiness' };
    const [objects, blobs, list] = await Promise.all([
      this.ledger(nobodys, (ledger) => ledger.overview(), { mayBegin: true }),
      reached(() => BLOBS.head('readiness')),
      reached(() => INDEX.prepare('SELECT 1').run()),
    ]);
    return { objects: objects.ok, blobs: blobs.ok, list: list.ok };
  }

  indexedPacks(workshop: string, { after, limit }: PageRequest): Promise<Reached<Page<IndexedPack>>> {
    return reached(async () => {
      const [issuedAt, pack] = after ? after.split('|') : ['~', '~'];
      const statement = `SELECT pack, registration, issuedAt, summary, supersededBy, withdrawnAt FROM packs WHERE workshop = ? AND (issuedAt, pack) < (?, ?)
        ORDER BY issuedAt DESC, pack DESC LIMIT ?`;
      const query = this.#env.INDEX.prepare(statement).bind(workshop, issuedAt ?? '~', pack ?? '~', limit + 1);
      const { results } = await query.all<IndexRow & Record<string, unknown>>();
      const { items, next } = pageOf<IndexRow>(results, limit, (row) => `${row.issuedAt}|${row.pack}`);
      const packs = await Promise.all(items.map((row) => indexedPackIn(row) ?? this.#fromLedger(workshop, row)));
      return { items: packs.filter((row) => row !== null), next };
    });
  }

  /**
   * Returns a pack for the list from its ledger; null if the ledger cannot be read, so that the others are still
   * listed.
   */
  async #fromLedger(workshop: string, { registration, pack }: IndexRow): Promise<IndexedPack | null> {
    const name = { workshop, registration: registration.toUpperCase() };
    const asked = await this.ledger(name, (ledger) => ledger.pack(pack));
    if (!asked.ok || !asked.value) return null;
    const { summary, supersededBy, withdrawal } = asked.value;
    return { summary, supersededBy, withdrawnAt: withdrawal?.at ?? null };
  }
}

const isFact = (value: unknown): boolean => typeof (value as { ok?: unknown } | null)?.ok === 'boolean';

const isWay = (value: unknown): boolean => {
  const { workshop, registration } = (value ?? {}) as Record<string, unknown>;
  return typeof workshop === 'string' && typeof registration === 'string';
};

/** Separate for each workshop: nobody can find out what another one has uploaded. */
const attachmentKey = ({ workshop, sha256 }: AttachmentName): string => `attachments/${workshop}/${sha256}`;

/** With a common prefix, so that one retention lock covers the sealed files of all workshops. */
const blobKey = (workshop: string, sha256: string): string => `sha256/${workshop}/${sha256}`;

/** Possible keys of a sealed file: that of its workshop, and for an old pack that of the former common place. */
const placesOf = ({ workshop, sha256, isShared = false }: BlobName): string[] => [
  blobKey(workshop, sha256),
  ...(isShared ? [`sha256/${sha256}`] : []),
];

/** Error codes of SQLite if its disk cannot be written or read, as when it is full or has become read-only. */
const DISK_FAILS = /SQLITE_(?:FULL|READONLY|IOERR|CANTOPEN)/;

/**
 * Whether an exception is an error of our code; any other comes from the connection to the object, or from its disk.
 */
const isOurFault = (error: Error): boolean =>
  'remote' in error &&
  error.remote === true &&
  !('overloaded' in error && error.overloaded) &&
  !DISK_FAILS.test(error.message);

/** Error codes of SQLite for a damaged database, or a file that is not a database any more. */
const IS_DAMAGED = /SQLITE_(?:CORRUPT|NOTADB)/;

async function reached<T>(
  act: () => Promise<T>,
  isFault: (error: Error) => boolean = () => false,
): Promise<Reached<T>> {
  try {
    return { ok: true, value: await act() };
  } catch (thrown) {
    const error = thrown instanceof Error ? thrown : new Error(String(thrown));
    const damage = damageIn(error.message);
    if (damage) return { ok: false, reason: 'damaged', ...damage };
    if (isFault(error)) throw error;
    return { ok: false, reason: 'unavailable', cause: error.message };
  }
}
