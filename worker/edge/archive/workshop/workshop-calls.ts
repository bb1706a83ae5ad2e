import type { RegisteredPerson } from '../../../core/core.ts';
import type { Page, PageRequest } from '../page.ts';

/** What a key may be used for. */
export const KEY_SCOPES = ['records', 'release', 'links', 'admin'] as const;
export type KeyScope = (typeof KEY_SCOPES)[number];

/** A key as the workshop knows it: never the key itself, only the digest of its text. */
export interface KeptKey {
  key: string;
  label: string;
  scopes: KeyScope[];
  /** Identifier of the person, as records name them, in whose hand the key is; null for a tool's or an office's key. */
  person: string | null;
  createdAt: string;
  /** To the hour. */
  lastUsedAt: string | null;
  revokedAt: string | null;
}

/** How much of its share a key has left. */
export interface Rate {
  /** Requests in a window. */
  limit: number;
  /** Negative when this request is one too many. */
  remaining: number;
  /** Seconds until the window ends. */
  resetS: number;
}

export interface Admission {
  key: KeptKey;
  rate: Rate;
  /** Whether the hour of this use is noted already. */
  isUseNoted: boolean;
}

export interface AddKey {
  keySha256: string;
  label: string;
  scopes: KeyScope[];
  person: string | null;
  at: string;
}

export type AddKeyOutcome = { kind: 'added'; key: KeptKey } | { kind: 'full' };
export type CreateOutcome = { kind: 'created'; key: KeptKey } | { kind: 'exists' };

/** A key that packs are sealed with. The private half is wrapped before it comes here; the public half is for everybody. */
export interface KeptSealKey {
  kid: string;
  /** JSON Web Key of the public half, as JSON. */
  publicJwk: string;
  wrapped: string;
  createdAt: string;
  /** From then on another key seals; what this one sealed stays good. */
  retiredAt: string | null;
}

/** A key of an earlier deployment: its private half stayed there. */
export type RetiredSealKey = Pick<KeptSealKey, 'kid' | 'publicJwk'>;

/** `added` counts those that were not known. */
export type TakeOverOutcome = { kind: 'taken'; added: number } | { kind: 'seals-already' };

export interface KnownAircraft {
  registration: string;
}

/** A person with when and by which key they were entered last. */
export interface EnteredPerson extends RegisteredPerson {
  enteredAt: string;
  enteredBy: string;
}

export type EnterPersonOutcome = { kind: 'entered'; person: EnteredPerson; isNew: boolean } | { kind: 'full' };

/** What can be asked of a workshop: who may come in, and what it seals with. */
export interface WorkshopCalls {
  /** Its name, or null where there is no such workshop. */
  displayName(): Promise<string | null>;
  /** Names the workshop and gives it its first key; only once. */
  create(name: string, key: AddKey): Promise<CreateOutcome>;
  /** The key with this digest, or null where it is unknown or revoked. Counts how often it is used, and writes nothing. */
  authenticate(keySha256: string, at: string, requestsPerMinute: number): Promise<Admission | null>;
  noteUse(keySha256: string, at: string): Promise<void>;
  addKey(key: AddKey): Promise<AddKeyOutcome>;
  keys(): Promise<KeptKey[]>;
  revokeKey(key: string, at: string): Promise<KeptKey | null>;
  /** Puts a new text in the place of a key's old one, which opens nothing from then on; null where there is no such key in use. */
  rotateKey(key: string, keySha256: string, at: string): Promise<KeptKey | null>;
  /** Every key it ever sealed with, the present one first; null where there is no such workshop. */
  sealKeys(): Promise<KeptSealKey[] | null>;
  /** Takes a key into use in place of another, `null` for the first; the key in use, where that one is no longer it. */
  takeSealKey(key: Omit<KeptSealKey, 'retiredAt'>, inPlaceOf: string | null): Promise<KeptSealKey>;
  /** Takes public keys of an earlier deployment over, all or none. */
  takeOverSealKeys(keys: RetiredSealKey[], at: string): Promise<TakeOverOutcome>;
  /** Everybody in its table of people, by identifier. */
  people(): Promise<EnteredPerson[]>;
  /** Enters somebody, or says of them anew what they are and may do. Nobody is ever taken out: a right ends on a day. */
  enterPerson(person: EnteredPerson): Promise<EnterPersonOutcome>;
  /** Remembers that there is, or is about to be, a ledger of this aircraft. */
  noteAircraft(registration: string): Promise<void>;
  /** Remembers that something was kept of this aircraft: its ledger is never again taken for a new one. */
  noteKept(registration: string): Promise<void>;
  wasKept(registration: string): Promise<boolean>;
  /** By registration. One whose first record was refused may be among them. */
  aircraft(page: PageRequest): Promise<Page<KnownAircraft>>;
}
