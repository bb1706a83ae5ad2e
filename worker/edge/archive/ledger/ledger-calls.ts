import type { PackPlace, PackSummary } from '../../../core/core.ts';
import type { Page, PageRequest } from '../page.ts';

/** Key with which an entry of the ledger was made, and its holder if it is the key of a person. */
export interface Actor {
  key: string;
  person: string | null;
}

/** Kept visit: the record as posted, and its state. */
export interface KeptVisit extends VisitState {
  record: string;
}

export interface VisitState {
  visit: string;
  /** Number of the kept version of the record, from 1. */
  version: number;
  recordSha256: string;
  updatedAt: string;
  /** `released` while the newest pack of the visit was sealed from the kept version. */
  state: 'working' | 'released';
  /** Newest pack of the visit. */
  pack: string | null;
}

/** Condition of a write: what the caller knows of the visit (RFC 9110, 13.1). */
export type Expected =
  | { kind: 'unstated' }
  | { kind: 'absent' }
  | { kind: 'present' }
  | { kind: 'one-of'; recordSha256: string[] };

export interface KeepVisit {
  visit: string;
  record: string;
  recordSha256: string;
  expected: Expected;
  actor: Actor;
  at: string;
}

export type KeepOutcome =
  | { kind: 'created' | 'replaced' | 'unchanged'; state: VisitState }
  | { kind: 'exists' }
  | { kind: 'moved' }
  | { kind: 'condition-required' };

export interface PackDigests {
  manifestSha256: string;
  pdfSha256: string;
  recordSha256: string;
  documentsSha256: string;
  /** Digest of the facts kept at the release; null for packs sealed before facts were kept. */
  factsSha256: string | null;
}

/** Withdrawal of a pack: the reason, and who withdrew it. */
export interface Withdrawal {
  at: string;
  by: string;
  reason: string;
}

/** Sealed pack in the ledger. It can change only twice: when a later issue replaces it, and when it is withdrawn. */
export interface KeptPack extends PackDigests {
  summary: PackSummary;
  previous: string | null;
  supersededBy: string | null;
  withdrawal: Withdrawal | null;
  /** Whether its files are in the former common place of all workshops. */
  isShared: boolean;
  /** Whether it was sealed in an earlier deployment. */
  isRestored: boolean;
}

export interface WithdrawPack extends Withdrawal {
  workshop: string;
  pack: string;
  actor: Actor;
}

/** Key by which a client may repeat a request, and the digest of the request. */
export interface RequestKey {
  keySha256: string;
  fingerprintSha256: string;
}

export interface CommitPack {
  workshop: string;
  /** Turn in which it was sealed. */
  turn: number | null;
  place: PackPlace;
  /** Version of the visit that was read and sealed. */
  version: number;
  digests: PackDigests;
  summary: PackSummary;
  actor: Actor;
  request?: RequestKey;
  at: string;
}

export type CommitOutcome =
  | { kind: 'sealed'; pack: KeptPack }
  | { kind: 'already-released'; pack: KeptPack }
  | { kind: 'moved' }
  /** The ledger has an entry of a later time than this one, anywhere in its chain. */
  | { kind: 'clock-behind'; lastAt: string }
  | { kind: 'key-reused' };

/** Content that was opened by a link. */
export type Opened = 'page' | 'pdf' | 'document' | 'photograph';

export interface Opening {
  at: string;
  what: Opened;
}

/** Link with its use. */
export interface UsedLink extends KeptLink {
  timesOpened: number;
  /** Newest first. */
  openings: Opening[];
}

export const AUDIENCES = ['owner', 'inspector'] as const;

export interface KeptLink {
  link: string;
  number: number;
  audience: (typeof AUDIENCES)[number];
  createdAt: string;
  expiresAt: string;
  revokedAt: string | null;
}

export interface AddLink {
  tokenSha256: string;
  pack: string;
  audience: KeptLink['audience'];
  expiresAt: string;
  actor: Actor;
  request?: RequestKey;
  at: string;
}

export interface RevokeLink {
  pack: string;
  link: string;
  actor: Actor;
  at: string;
}

export type AddLinkOutcome =
  | { kind: 'added' | 'repeated'; link: KeptLink }
  | { kind: 'no-pack' }
  | { kind: 'key-reused' };

/** Events after a pack was sealed. */
export interface Aftermath {
  /** Newest pack of the aircraft, if its number is higher. It may be withdrawn: then there is no current release. */
  later: KeptPack | null;
  /**
   * Packs of lower numbers that were reissued or withdrawn since: figures carried forward from them are no longer
   * valid.
   */
  corrected: KeptPack[];
}

/** Position of a visit among the packs of its aircraft, without its record. */
export interface PacksAround {
  state: VisitState | null;
  /** Newest issue of the pack of the visit; null if it was never released. */
  own: KeptPack | null;
  /** Newest issue of every pack before that of the visit, and after it, oldest first. */
  before: KeptPack[];
  after: KeptPack[];
}

/** Visit among the packs of its aircraft. */
export interface VisitAmongPacks extends Pick<PacksAround, 'own' | 'before' | 'after'> {
  kept: KeptVisit | null;
  /** Place of the next pack of this visit. */
  place: PackPlace;
}

/** The same with the turn to seal it; null if it is already released. */
export interface VisitToSeal extends VisitAmongPacks {
  turn: number | null;
}

/** Pack, the newest issue of its number, and what happened to that issue. */
export interface TracedPack extends Aftermath {
  pack: KeptPack;
  newest: KeptPack | null;
}

/** Target of a link: the newest issue of its pack number. */
export interface OpenedLink extends Aftermath {
  link: KeptLink;
  pack: KeptPack;
}

/** Outcome of an earlier request under the same key. */
export type Repeated =
  | { kind: 'first' }
  /** `wasStanding` if it made no pack, because the visit was already released. */
  | { kind: 'repeated'; pack: KeptPack; wasStanding: boolean }
  | { kind: 'key-reused' };

/** Kinds of entries in the chain. */
export const CHAIN_KINDS = ['visit-kept', 'pack-sealed', 'pack-withdrawn', 'link-made', 'link-revoked'] as const;
export type ChainKind = (typeof CHAIN_KINDS)[number];

/**
 * Entry of the chain: `digest` is the SHA-256 of the JSON array `[previous, seq, at, kind, body]`, `body` being text.
 */
export interface ChainEntry {
  seq: number;
  at: string;
  kind: ChainKind;
  body: string;
  previous: string;
  digest: string;
}

export interface AircraftOverview {
  visits: number;
  packs: number;
  newest: KeptPack | null;
  head: { seq: number; digest: string };
}

/**
 * Whole ledger of an earlier deployment, without links: they belong to an address, and only their digests are known.
 */
export interface Restoration {
  workshop: string;
  entries: ChainEntry[];
  visits: KeptVisit[];
  /** In the order of sealing. */
  packs: KeptPack[];
}

/**
 * All packs of an aircraft with the digests of file and facts, and the digests of the tokens of all links that were not
 * revoked.
 */
export interface Relisted {
  packs: { pack: string; pdfSha256: string; factsSha256: string | null }[];
  tokens: string[];
  /** Number of summaries that differed from what was sealed. */
  mended: number;
}

/** `unchanged` if this ledger was restored here before. */
export type RestoreOutcome = { kind: 'restored' | 'unchanged' | 'not-empty' };

/** Calls to the ledger of one aircraft. Every change is one transaction that also extends the chain. */
export interface LedgerCalls {
  overview(): Promise<AircraftOverview>;
  visit(visit: string): Promise<KeptVisit | null>;
  visits(page: PageRequest): Promise<Page<VisitState>>;
  keep(request: KeepVisit): Promise<KeepOutcome>;
  /** Without the record: a caller that replaces a record need not read the current one. */
  packsAround(visit: string): Promise<PacksAround>;
  /** Writes nothing. */
  visitAmongPacks(registration: string, visit: string): Promise<VisitAmongPacks>;
  /** The same once it is this visit's turn to be sealed. `commit` or `leaveTurn` ends the turn; else it times out. */
  visitToSeal(registration: string, visit: string): Promise<VisitToSeal>;
  leaveTurn(turn: number): Promise<void>;
  /** Returns the newest issue of every pack, oldest first. */
  newestIssues(): Promise<KeptPack[]>;
  commit(request: CommitPack): Promise<CommitOutcome>;
  /** Returns the outcome of an earlier release under the same key. */
  repeated(request: RequestKey): Promise<Repeated>;
  /** Records a release that made no pack, because this one was current. */
  rememberStanding(request: RequestKey, pack: string, at: string): Promise<{ kind: 'remembered' | 'key-reused' }>;
  pack(pack: string): Promise<KeptPack | null>;
  /** Returns a pack, and what happened to it. */
  traced(pack: string): Promise<TracedPack | null>;
  packs(page: PageRequest): Promise<Page<KeptPack>>;
  entries(page: PageRequest): Promise<Page<ChainEntry>>;
  addLink(request: AddLink): Promise<AddLinkOutcome>;
  links(pack: string): Promise<UsedLink[] | null>;
  /** Returns the pack as withdrawn, now or before; null if the pack does not exist. */
  withdraw(request: WithdrawPack): Promise<KeptPack | null>;
  /** Restores a whole ledger; only into an empty one. */
  restore(request: Restoration): Promise<RestoreOutcome>;
  /**
   * Sends every pack to the index again. The aircraft is not changed.
   *
   * @param sealed summaries as sealed, which replace those that lists show
   */
  relist(workshop: string, sealed: PackSummary[]): Promise<Relisted>;
  revokeLink(request: RevokeLink): Promise<KeptLink | null>;
  /** Returns null for a link that is unknown, expired or revoked: callers cannot tell which. Writes nothing. */
  openLink(tokenSha256: string, at: string): Promise<OpenedLink | null>;
  noteOpening(link: string, opening: Opening): Promise<void>;
}
