import type { PackSummary } from '../pipeline.ts';
import type { LedgerCalls } from './ledger/ledger-calls.ts';
import type { Page, PageRequest } from './page.ts';
import type { WorkshopCalls } from './workshop/workshop-calls.ts';

/** The answer of the archive, or the fact that it could not be reached just now. */
export type Reached<T> = { ok: true; value: T } | { ok: false; reason: 'unavailable'; cause: string };

/** Which ledger: an aircraft as one workshop knows it. */
export interface LedgerName {
  workshop: string;
  registration: string;
}

/** Part of a blob, in bytes. */
export interface ByteRange {
  offset: number;
  length: number;
}

/** A line of the list of all packs of a workshop. */
export interface IndexedPack {
  summary: PackSummary;
  supersededBy: string | null;
}

/**
 * Where everything is kept. Ledgers and workshops are asked by a question, so that each answer is either theirs or
 * `unavailable`; blobs are immutable and stored under their SHA-256.
 */
export interface Archive {
  ledger<T>(name: LedgerName, question: (ledger: LedgerCalls) => Promise<T>): Promise<Reached<T>>;
  workshop<T>(workshop: string, question: (workshop: WorkshopCalls) => Promise<T>): Promise<Reached<T>>;
  putBlob(sha256: string, bytes: Uint8Array): Promise<Reached<void>>;
  /** Bytes in the blob, or null where there is none. */
  sizeOfBlob(sha256: string): Promise<Reached<number | null>>;
  blob(sha256: string, range?: ByteRange): Promise<Reached<ReadableStream<Uint8Array> | null>>;
  /** Remembers which ledger a link belongs to. */
  pointLink(tokenSha256: string, ledger: LedgerName): Promise<Reached<void>>;
  ledgerOfLink(tokenSha256: string): Promise<Reached<LedgerName | null>>;
  /** All packs of a workshop, newest first, out of the index, which follows the ledgers within seconds. */
  indexedPacks(workshop: string, page: PageRequest): Promise<Reached<Page<IndexedPack>>>;
}
