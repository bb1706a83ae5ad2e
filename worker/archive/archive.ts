import type { AttachmentFact, PackSummary } from '../pipeline.ts';
import type { SealClaims } from '../seal/claims.ts';
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

/** A file that a workshop handed in. */
export interface AttachmentName {
  workshop: string;
  sha256: string;
}

/** The pack that a file is said to be; its ledger knows whether it is. */
export interface FilePack extends LedgerName {
  pack: string;
}

/** What the seal of a genuine pack says, without the digests of its parts. */
export type SealFacts = Pick<
  SealClaims,
  'workshop' | 'registration' | 'pack' | 'issuedAt' | 'manifestSha256' | 'recordSha256'
>;

/** Part of a blob, in bytes. */
export interface ByteRange {
  offset: number;
  length: number;
}

/** A line of the list of all packs of a workshop. */
export interface IndexedPack {
  summary: PackSummary;
  supersededBy: string | null;
  withdrawnAt: string | null;
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
  /** Keeps a blob that a ledger is to be restored over, with what its seal proves where it is a pack of the workshop. */
  stageBlob(name: LedgerName, sha256: string, bytes: Uint8Array, seal: SealFacts | null): Promise<Reached<void>>;
  /** The blobs that were brought for a ledger, by digest. */
  stagedBlobs(name: LedgerName): Promise<Reached<Map<string, SealFacts | null>>>;
  /** Forgets that these were brought; the blobs stay. */
  unstageBlobs(name: LedgerName, digests: readonly string[]): Promise<Reached<void>>;
  /** Keeps a file that was handed in, for the workshop alone, with what looking into it gave; of a refused file only that. */
  putAttachment(name: AttachmentName, fact: AttachmentFact, bytes: Uint8Array): Promise<Reached<void>>;
  /** What looking into a file gave, or null where it was not handed in. */
  attachmentFact(name: AttachmentName): Promise<Reached<AttachmentFact | null>>;
  attachment(name: AttachmentName): Promise<Reached<Uint8Array | null>>;
  /** Remembers which ledger a sealed file belongs to, so that anybody who has the file can ask after it. */
  pointFile(pdfSha256: string, pack: FilePack): Promise<Reached<void>>;
  packOfFile(pdfSha256: string): Promise<Reached<FilePack | null>>;
  /** Remembers which ledger a link belongs to. */
  pointLink(tokenSha256: string, ledger: LedgerName): Promise<Reached<void>>;
  ledgerOfLink(tokenSha256: string): Promise<Reached<LedgerName | null>>;
  /** All packs of a workshop, newest first, out of the index, which follows the ledgers within seconds. */
  indexedPacks(workshop: string, page: PageRequest): Promise<Reached<Page<IndexedPack>>>;
}
