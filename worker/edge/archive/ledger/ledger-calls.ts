import type { PackPlace, PackSummary } from '../../../core/core.ts';
import type { Page, PageRequest } from '../page.ts';

/** The key that an entry of the ledger was made with, and the person in whose hand it is where it is a person's. */
export interface Actor {
  key: string;
  person: string | null;
}

/** A visit as kept: the record as posted, and where it stands. */
export interface KeptVisit extends VisitState {
  record: string;
}

export interface VisitState {
  visit: string;
  /** Counts the kept forms of the record, from 1. */
  version: number;
  recordSha256: string;
  updatedAt: string;
  /** `released` while the kept form is the one that the newest pack of the visit was sealed from. */
  state: 'working' | 'released';
  /** Newest pack of the visit. */
  pack: string | null;
}

/** What the caller knows of the visit that it means to write (RFC 9110, 13.1). */
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
  /** Of what was said of the pack when it was released; null for packs of before that was kept. */
  factsSha256: string | null;
}

/** Why a pack no longer stands, and who says so. */
export interface Withdrawal {
  at: string;
  by: string;
  reason: string;
}

/** A sealed pack as the ledger knows it. Only what is said of it can change, once each: that a later issue replaces it, that it is withdrawn. */
export interface KeptPack extends PackDigests {
  summary: PackSummary;
  previous: string | null;
  supersededBy: string | null;
  withdrawal: Withdrawal | null;
  /** Its files lie where all workshops kept theirs together, before each had a place of its own. */
  isShared: boolean;
  /** It was sealed in an earlier deployment. */
  isRestored: boolean;
}

export interface WithdrawPack extends Withdrawal {
  workshop: string;
  pack: string;
  actor: Actor;
}

/** A key by which a client may repeat a request, and the digest of what it asked for. */
export interface RequestKey {
  keySha256: string;
  fingerprintSha256: string;
}

export interface CommitPack {
  workshop: string;
  /** The turn that it was sealed in. */
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
  /** The ledger has an entry of a later moment than this one, at any place of its chain. */
  | { kind: 'clock-behind'; lastAt: string }
  | { kind: 'key-reused' };

/** What somebody opened by a link. */
export type Opened = 'page' | 'pdf' | 'document' | 'photograph';

export interface Opening {
  at: string;
  what: Opened;
}

/** A link with how it was used. */
export interface UsedLink extends KeptLink {
  timesOpened: number;
  /** The latest first. */
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

/** What became of a pack since it was sealed. */
export interface Aftermath {
  /** The newest pack of the aircraft, where that has a higher number. It may be withdrawn: then no release stands. */
  later: KeptPack | null;
  /** Packs of lower numbers that were issued anew or withdrawn since: what was carried forward from them no longer holds. */
  corrected: KeptPack[];
}

/** Where a visit stands among the packs of its aircraft, without its record. */
export interface PacksAround {
  state: VisitState | null;
  /** The newest issue of every pack before that of the visit, and after it, the oldest first. */
  before: KeptPack[];
  after: KeptPack[];
}

/** A visit among the packs of its aircraft. */
export interface VisitAmongPacks extends Pick<PacksAround, 'before' | 'after'> {
  kept: KeptVisit | null;
  /** Where the next pack of this visit would stand. */
  place: PackPlace;
}

/** The same, and the turn to seal it; null where it is released as it stands. */
export interface VisitToSeal extends VisitAmongPacks {
  turn: number | null;
}

/** A pack, the newest issue of its number, and what became of that. */
export interface TracedPack extends Aftermath {
  pack: KeptPack;
  newest: KeptPack | null;
}

/** What a link leads to: the newest issue of its pack number. */
export interface OpenedLink extends Aftermath {
  link: KeptLink;
  pack: KeptPack;
}

/** The outcome of an earlier request under the same key. */
export type Repeated =
  | { kind: 'first' }
  /** `wasStanding` when it made no pack, because the visit was released before. */
  | { kind: 'repeated'; pack: KeptPack; wasStanding: boolean }
  | { kind: 'key-reused' };

/** What an entry of the chain tells. */
export const CHAIN_KINDS = ['visit-kept', 'pack-sealed', 'pack-withdrawn', 'link-made', 'link-revoked'] as const;
export type ChainKind = (typeof CHAIN_KINDS)[number];

/** One link of the chain: `digest` is the SHA-256 of the JSON array `[previous, seq, at, kind, body]`, `body` being text. */
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

/** A whole ledger of an earlier deployment. Links stay behind: they belong to an address, and only their digests are known. */
export interface Restoration {
  workshop: string;
  entries: ChainEntry[];
  visits: KeptVisit[];
  /** In the order in which they were sealed. */
  packs: KeptPack[];
}

/** Every pack of an aircraft with the digests of its file and facts, and the digest of the token of every link that was not revoked. */
export interface Relisted {
  packs: { pack: string; pdfSha256: string; factsSha256: string | null }[];
  tokens: string[];
  /** So many summaries were not what was sealed. */
  mended: number;
}

/** `unchanged` where this very ledger stands here already. */
export type RestoreOutcome = { kind: 'restored' | 'unchanged' | 'not-empty' };

/** What can be asked of the ledger of one aircraft. Every change is one transaction that also extends the chain. */
export interface LedgerCalls {
  overview(): Promise<AircraftOverview>;
  visit(visit: string): Promise<KeptVisit | null>;
  visits(page: PageRequest): Promise<Page<VisitState>>;
  keep(request: KeepVisit): Promise<KeepOutcome>;
  /** Whoever writes a record anew need not have the one that stands. */
  packsAround(visit: string): Promise<PacksAround>;
  /** Writes nothing. */
  visitAmongPacks(registration: string, visit: string): Promise<VisitAmongPacks>;
  /** The same once it is its turn to be sealed. The turn is given back by `commit` or `leaveTurn`, and ends by itself after a while. */
  visitToSeal(registration: string, visit: string): Promise<VisitToSeal>;
  leaveTurn(turn: number): Promise<void>;
  /** The newest issue of every pack, the oldest first. */
  newestIssues(): Promise<KeptPack[]>;
  commit(request: CommitPack): Promise<CommitOutcome>;
  /** What an earlier release under the same key came to. */
  repeated(request: RequestKey): Promise<Repeated>;
  /** Remembers a release that made no pack, because this one stood. */
  rememberStanding(request: RequestKey, pack: string, at: string): Promise<{ kind: 'remembered' | 'key-reused' }>;
  pack(pack: string): Promise<KeptPack | null>;
  /** A pack, and what became of it. */
  traced(pack: string): Promise<TracedPack | null>;
  packs(page: PageRequest): Promise<Page<KeptPack>>;
  entries(page: PageRequest): Promise<Page<ChainEntry>>;
  addLink(request: AddLink): Promise<AddLinkOutcome>;
  links(pack: string): Promise<UsedLink[] | null>;
  /** The pack as withdrawn, now or before; null where there is no such pack. */
  withdraw(request: WithdrawPack): Promise<KeptPack | null>;
  /** Takes a ledger over as it was, whole; only where nothing ever happened. */
  restore(request: Restoration): Promise<RestoreOutcome>;
  /**
   * Has the index told of every pack again. Nothing happens to the aircraft.
   *
   * @param sealed what was sealed of packs, in the place of what lists show of them
   */
  relist(workshop: string, sealed: PackSummary[]): Promise<Relisted>;
  revokeLink(request: RevokeLink): Promise<KeptLink | null>;
  /** Null for a link that is unknown, expired or revoked: callers cannot tell which. Writes nothing. */
  openLink(tokenSha256: string, at: string): Promise<OpenedLink | null>;
  noteOpening(link: string, opening: Opening): Promise<void>;
}
