import type { AttachmentFact, PackSummary } from '../../core/core.ts';
import type { SealClaims } from '../../core/seal/claims.ts';
import type { LedgerCalls } from './ledger/ledger-calls.ts';
import type { Page, PageRequest } from './page.ts';
import type { WorkshopCalls } from './workshop/workshop-calls.ts';

// One ledger per workshop and registration: a workshop sees only its own entries, so the object has both names. An
// aircraft that changes workshop is handed over by link.

/** The answer of the archive; or that it could not be reached just now, or that what it holds is not what was kept, with what can be done where that is known. */
export type Reached<T> =
  | { ok: true; value: T }
  | { ok: false; reason: 'unavailable'; cause: string }
  | { ok: false; reason: 'damaged'; what: string; remedy?: string };

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

/** A sealed file of a workshop. */
export interface BlobName {
  workshop: string;
  sha256: string;
  /** It may lie where all workshops kept theirs together, because its pack is of that time. @default false */
  isShared?: boolean;
}

/** The pack that a file is said to be; its ledger knows whether it is. */
export interface FilePack extends LedgerName {
  pack: string;
}

/** What the seal of a genuine pack says, without the digests of its parts. */
export type SealFacts = Pick<
  SealClaims,
  'workshop' | 'registration' | 'pack' | 'issuedAt' | 'manifestSha256' | 'recordSha256'
> & {
  /** The key that sealed it. Left out by what was brought before that was noted. */
  kid?: string;
};

/** A line of the list of all packs of a workshop. */
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

/** How something is asked. */
export interface Asking {
  /** The question may begin what is not there yet. Every other one leaves nothing behind. @default false */
  mayBegin?: boolean;
}

/**
 * Where everything is kept. Ledgers and workshops are asked by a question, so that each answer is either theirs or says why there is
 * none; blobs are immutable, kept for each workshop apart under their SHA-256, and held against it whenever they are read.
 */
export interface Archive {
  ledger<T>(name: LedgerName, question: (ledger: LedgerCalls) => Promise<T>, asking?: Asking): Promise<Reached<T>>;
  workshop<T>(workshop: string, question: (calls: WorkshopCalls) => Promise<T>, asking?: Asking): Promise<Reached<T>>;
  /** Keeps sealed files; once it is answered they outlast a power cut. What stands there damaged is replaced. */
  putBlobs(workshop: string, blobs: ReadonlyMap<string, Uint8Array>): Promise<Reached<void>>;
  /** Bytes in the blob, or null where there is none. */
  sizeOfBlob(name: BlobName): Promise<Reached<number | null>>;
  /** The blob, or null where there is none. */
  blob(name: BlobName): Promise<Reached<Uint8Array | null>>;
  /** Keeps a blob that a ledger is to be restored over, with what its seal proves where it is a pack of the workshop. */
  stageBlob(name: LedgerName, sha256: string, bytes: Uint8Array, seal: SealFacts | null): Promise<Reached<void>>;
  /** The blobs that were brought for a ledger, by digest. */
  stagedBlobs(name: LedgerName): Promise<Reached<Map<string, SealFacts | null>>>;
  /** One of them, or null where it was not brought. */
  stagedBlob(name: LedgerName, sha256: string): Promise<Reached<Uint8Array | null>>;
  /** Puts what was brought among the sealed files of the workshop. */
  takeOverBlobs(name: LedgerName, digests: readonly string[]): Promise<Reached<void>>;
  /** Clears away what was brought. */
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
  /** Whether each kind of storage can be read. */
  readiness(): Promise<Readiness>;
  /** All packs of a workshop, newest first, out of the index, which follows the ledgers within seconds. */
  indexedPacks(workshop: string, page: PageRequest): Promise<Reached<Page<IndexedPack>>>;
}
