import type { Bindings } from '../env.ts';
import type { AttachmentFact } from '../pipeline.ts';
import type {
  Archive,
  AttachmentName,
  ByteRange,
  FilePack,
  IndexedPack,
  LedgerName,
  Reached,
  SealFacts,
} from './archive.ts';
import { keepBlob } from './keep-blob.ts';
import type { LedgerCalls } from './ledger/ledger-calls.ts';
import { type Page, type PageRequest, pageOf } from './page.ts';
import { stage, staged, unstage } from './staging.ts';
import type { WorkshopCalls } from './workshop/workshop-calls.ts';

/** The archive over the platform's storage: Durable Objects, R2 and, for lists, D1. */
export class CloudArchive implements Archive {
  readonly #env: Bindings;

  constructor(env: Bindings) {
    this.#env = env;
  }

  ledger<T>({ workshop, registration }: LedgerName, question: (ledger: LedgerCalls) => Promise<T>) {
    const { LEDGER } = this.#env;
    // The stub has the methods of the object; its generated type wraps each answer in ways that plain data does not need.
    const stub = LEDGER.get(LEDGER.idFromName(`${workshop}/${registration}`)) as unknown as LedgerCalls;
    return reached(() => question(stub), isOurFault);
  }

  workshop<T>(workshop: string, question: (workshop: WorkshopCalls) => Promise<T>) {
    const { WORKSHOP } = this.#env;
    const stub = WORKSHOP.get(WORKSHOP.idFromName(workshop)) as unknown as WorkshopCalls;
    return reached(() => question(stub), isOurFault);
  }

  /** R2 checks the bytes against the digest that they are stored under. */
  putBlob(sha256: string, bytes: Uint8Array): Promise<Reached<void>> {
    return reached(() => keepBlob(this.#env.BLOBS, blobKey(sha256), sha256, bytes));
  }

  sizeOfBlob(sha256: string): Promise<Reached<number | null>> {
    return reached(async () => (await this.#env.BLOBS.head(blobKey(sha256)))?.size ?? null);
  }

  blob(sha256: string, range?: ByteRange): Promise<Reached<ReadableStream<Uint8Array> | null>> {
    return reached(async () => {
      const object = await this.#env.BLOBS.get(blobKey(sha256), range && { range });
      return object?.body ?? null;
    });
  }

  stageBlob(name: LedgerName, sha256: string, bytes: Uint8Array, seal: SealFacts | null): Promise<Reached<void>> {
    return reached(async () => {
      await keepBlob(this.#env.BLOBS, blobKey(sha256), sha256, bytes);
      await stage(this.#env.BLOBS, name, sha256, seal);
    });
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
    });
  }

  attachmentFact(name: AttachmentName): Promise<Reached<AttachmentFact | null>> {
    return reached(async () => {
      const fact = (await this.#env.BLOBS.head(attachmentKey(name)))?.customMetadata?.fact;
      return fact === undefined ? null : (JSON.parse(fact) as AttachmentFact);
    });
  }

  attachment(name: AttachmentName): Promise<Reached<Uint8Array | null>> {
    return reached(async () => {
      const object = await this.#env.BLOBS.get(attachmentKey(name));
      return object ? new Uint8Array(await object.arrayBuffer()) : null;
    });
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
    });
  }

  #pointer<T>(key: string): Promise<Reached<T | null>> {
    return reached(async () => {
      const object = await this.#env.BLOBS.get(key);
      return object && (await object.json<T>());
    });
  }

  indexedPacks(workshop: string, { after, limit }: PageRequest): Promise<Reached<Page<IndexedPack>>> {
    return reached(async () => {
      const [issuedAt, pack] = after ? after.split('|') : ['~', '~'];
      const statement = `SELECT summary, supersededBy, withdrawnAt FROM packs WHERE workshop = ? AND (issuedAt, pack) < (?, ?)
        ORDER BY issuedAt DESC, pack DESC LIMIT ?`;
      const query = this.#env.INDEX.prepare(statement).bind(workshop, issuedAt ?? '~', pack ?? '~', limit + 1);
      const { results } = await query.all<Omit<IndexedPack, 'summary'> & { summary: string }>();
      const rows = results.map((row) => ({ ...row, summary: JSON.parse(row.summary) }));
      return pageOf<IndexedPack>(rows, limit, ({ summary }) => `${summary.issuedAt}|${summary.pack}`);
    });
  }
}

/** Apart for each workshop: nobody can find out what another one has handed in. */
const attachmentKey = ({ workshop, sha256 }: AttachmentName): string => `attachments/${workshop}/${sha256}`;

const blobKey = (sha256: string): string => `sha256/${sha256}`;

/** An exception inside an object is a fault of this code; anything else is the way to the object. */
const isOurFault = (error: unknown): boolean =>
  error instanceof Error && 'remote' in error && error.remote === true && !('overloaded' in error && error.overloaded);

async function reached<T>(act: () => Promise<T>, isFault: (error: unknown) => boolean = () => false) {
  try {
    return { ok: true, value: await act() } as const;
  } catch (error) {
    if (isFault(error)) throw error;
    return { ok: false, reason: 'unavailable', cause: error instanceof Error ? error.message : String(error) } as const;
  }
}
