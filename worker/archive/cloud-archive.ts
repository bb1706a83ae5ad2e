import type { Bindings } from '../env.ts';
import type { Archive, ByteRange, IndexedPack, LedgerName, Reached } from './archive.ts';
import type { LedgerCalls } from './ledger/ledger-calls.ts';
import { type Page, type PageRequest, pageOf } from './page.ts';
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
    return reached(async () => {
      await this.#env.BLOBS.put(blobKey(sha256), bytes, { sha256 });
    });
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

  pointLink(tokenSha256: string, ledger: LedgerName): Promise<Reached<void>> {
    return reached(async () => {
      await this.#env.BLOBS.put(`links/${tokenSha256}`, JSON.stringify(ledger));
    });
  }

  ledgerOfLink(tokenSha256: string): Promise<Reached<LedgerName | null>> {
    return reached(async () => {
      const object = await this.#env.BLOBS.get(`links/${tokenSha256}`);
      return object && (await object.json<LedgerName>());
    });
  }

  indexedPacks(workshop: string, { after, limit }: PageRequest): Promise<Reached<Page<IndexedPack>>> {
    return reached(async () => {
      const [issuedAt, pack] = after ? after.split('|') : ['~', '~'];
      const statement = `SELECT summary, supersededBy FROM packs WHERE workshop = ? AND (issuedAt, pack) < (?, ?)
        ORDER BY issuedAt DESC, pack DESC LIMIT ?`;
      const query = this.#env.INDEX.prepare(statement).bind(workshop, issuedAt ?? '~', pack ?? '~', limit + 1);
      const { results } = await query.all<{ summary: string; supersededBy: string | null }>();
      const rows = results.map((row) => ({ summary: JSON.parse(row.summary), supersededBy: row.supersededBy }));
      return pageOf<IndexedPack>(rows, limit, ({ summary }) => `${summary.issuedAt}|${summary.pack}`);
    });
  }
}

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
