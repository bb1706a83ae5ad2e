import type { AttachmentFact, PackSummary } from '../../core/core.ts';
import type { SealClaims } from '../../core/seal/claims.ts';
import type { LedgerCalls } from './ledger/ledger-calls.ts';
import type { Page, PageRequest } from './page.ts';
import type { WorkshopCalls } from './workshop/workshop-calls.ts';

// One ledger per workshop and registration: a workshop sees only its own entries, so the object has both names. An
// aircraft that changes workshop is handed over by link.

/**
 * Result of the archive, or the reason for its failure: not reachable for now, or stored data is damaged, with the
 * remedy if known.
 */
export type Reached<T> =
  | { ok: true; value: T }
  | { ok: false; reason: 'unavailable'; cause: string }
  | { ok: false; reason: 'damaged'; what: string; remedy?: string };

/** Name of a ledger: an aircraft of one workshop. */
export interface LedgerName {
  workshop: string;
  registration: string;
}

/** Uploaded file of a workshop. */
export interface AttachmentName {
  workshop: string;
  sha256: string;
}

/** Sealed file of a workshop. */
export interface BlobName {
  workshop: string;
  sha256: string;
  /** Whether it may be in the former common place of all workshops, because its pack is of that time. @default false */
  isShared?: boolean;
}

/** Pack that a file claims to be; its ledger decides whether it is. */
export interface FilePack extends LedgerName {
  pack: string;
}

/** Facts in the seal of a genuine pack, without the digests of its parts. */
export type SealFacts = Pick<
  SealClaims,
  'workshop' | 'registration' | 'pack' | 'issuedAt' | 'manifestSha256' | 'recordSha256'
> & {
  /** Key of the seal. Missing for files brought before this was noted. */
  kid?: string;
};

/** Line in the list of all packs of a workshop. */
export interface IndexedPack {
  summary: PackSummary;
  supersededBy: string | null;
  withdrawnAt: string | null;
}

/** Whether ledgers and workshops, files, and the list of packs can be read. */
export interface Readiness {
  objects: boolean;
  blobs: boolean;
  list: boolean;
}

/** Options of a question. */
export interface Asking {
  /** Whether the question may create the ledger or workshop. All others leave nothing behind. @default false */
  mayBegin?: boolean;
}

/**
 * Storage of everything. Ledgers and workshops are called with a function, so that each result is either theirs or the
 * reason why there is none. Blobs are immutable, kept for each workshop separately under their SHA-256, and compared
 * with it on every read.
 */
export interface Archive {
  ledger<T>(name: LedgerName, question: (ledger: LedgerCalls) => Promise<T>, asking?: Asking): Promise<Reached<T>>;
  workshop<T>(workshop: string, question: (calls: WorkshopCalls) => Promise<T>, asking?: Asking): Promise<Reached<T>>;
  /** Keeps sealed files; once it returns, they outlast a power cut. A damaged stored file is replaced. */
  putBlobs(workshop: string, blobs: ReadonlyMap<string, Uint8Array>): Promise<Reached<void>>;
  /** Returns the size of the blob in bytes, or null if it does not exist. */
  sizeOfBlob(name: BlobName): Promise<Reached<number | null>>;
  /** Returns the blob, or null if it does not exist. */
  blob(name: BlobName): Promise<Reached<Uint8Array | null>>;
  /** Stages a blob for the restoration of a ledger, with the facts of its seal if it is a pack of the workshop. */
  stageBlob(name: LedgerName, sha256: string, bytes: Uint8Array, seal: SealFacts | null): Promise<Reached<void>>;
  /** Returns the staged blobs of a ledger, by digest. */
  stagedBlobs(name: LedgerName): Promise<Reached<Map<string, SealFacts | null>>>;
  /** Returns a staged blob, or null if it does not exist. */
  stagedBlob(name: LedgerName, sha256: string): Promise<Reached<Uint8Array | null>>;
  /** Moves staged blobs to the sealed files of the workshop. */
  takeOverBlobs(name: LedgerName, digests: readonly string[]): Promise<Reached<void>>;
  /** Deletes staged blobs. */
  unstageBlobs(name: LedgerName, digests: readonly string[]): Promise<Reached<void>>;
  /**
   * Keeps an uploaded file, for this workshop only, with the facts from its inspection; of a refused file only the
   * facts.
   */
  putAttachment(name: AttachmentName, fact: AttachmentFact, bytes: Uint8Array): Promise<Reached<void>>;
  /** Returns the facts from the inspection of a file, or null if it was not uploaded. */
  attachmentFact(name: AttachmentName): Promise<Reached<AttachmentFact | null>>;
  attachment(name: AttachmentName): Promise<Reached<Uint8Array | null>>;
  /** Records the ledger of a sealed file, so that anybody who has the file can verify it. */
  pointFile(pdfSha256: string, pack: FilePack): Promise<Reached<void>>;
  packOfFile(pdfSha256: string): Promise<Reached<FilePack | null>>;
  /** Records the ledger of a link. */
  pointLink(tokenSha256: string, ledger: LedgerName): Promise<Reached<void>>;
  ledgerOfLink(tokenSha256: string): Promise<Reached<LedgerName | null>>;
  /** Returns whether each kind of storage can be read. */
  readiness(): Promise<Readiness>;
  /** Returns all packs of a workshop, newest first, from the index, which follows the ledgers within seconds. */
  indexedPacks(workshop: string, page: PageRequest): Promise<Reached<Page<IndexedPack>>>;
}
