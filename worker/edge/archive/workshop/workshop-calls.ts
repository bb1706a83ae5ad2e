import type { RegisteredPerson } from '../../../core/core.ts';
import type { Page, PageRequest } from '../page.ts';

/** Scopes of a key. */
export const KEY_SCOPES = ['records', 'release', 'links', 'admin'] as const;
export type KeyScope = (typeof KEY_SCOPES)[number];

/** Key as the workshop stores it: never the key itself, only the digest of its text. */
export interface KeptKey {
  key: string;
  label: string;
  scopes: KeyScope[];
  /** Identifier of the person who holds the key, as in records; null for the key of a tool or an office. */
  person: string | null;
  createdAt: string;
  /** To the hour. */
  lastUsedAt: string | null;
  revokedAt: string | null;
}

/** Requests that a key has left. */
export interface Rate {
  /** Requests in a window. */
  limit: number;
  /** Negative if this request exceeds the limit. */
  remaining: number;
  /** Seconds until the window ends. */
  resetS: number;
}

export interface Admission {
  key: KeptKey;
  rate: Rate;
  /** Whether the hour of this use is already recorded. */
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

/** Key that packs are sealed with. The private half is wrapped before it is stored; the public half is published. */
export interface KeptSealKey {
  kid: string;
  /** Public half as a JSON Web Key, in JSON. */
  publicJwk: string;
  wrapped: string;
  createdAt: string;
  /** Time since which another key seals; the seals of this one stay valid. */
  retiredAt: string | null;
}

/** Key of an earlier deployment: its private half stayed there. */
export type RetiredSealKey = Pick<KeptSealKey, 'kid' | 'publicJwk'>;

/** `added` is the number of keys that were not known. */
export type TakeOverOutcome = { kind: 'taken'; added: number } | { kind: 'seals-already' };

export interface KnownAircraft {
  registration: string;
}

/** Person, with the time and the key of the last entry. */
export interface EnteredPerson extends RegisteredPerson {
  enteredAt: string;
  enteredBy: string;
}

export type EnterPersonOutcome = { kind: 'entered'; person: EnteredPerson; isNew: boolean } | { kind: 'full' };

/** Calls to a workshop: its keys, its people and its seal keys. */
export interface WorkshopCalls {
  /** Returns its name, or null if the workshop does not exist. */
  displayName(): Promise<string | null>;
  /** Names the workshop and adds its first key; possible only once. */
  create(name: string, key: AddKey): Promise<CreateOutcome>;
  /** Returns the key with this digest, or null if it is unknown or revoked. Counts its requests, and writes nothing. */
  authenticate(keySha256: string, at: string, requestsPerMinute: number): Promise<Admission | null>;
  noteUse(keySha256: string, at: string): Promise<void>;
  addKey(key: AddKey): Promise<AddKeyOutcome>;
  keys(): Promise<KeptKey[]>;
  revokeKey(key: string, at: string): Promise<KeptKey | null>;
  /** Replaces the text of a key; the old one is not valid any more. Returns null if no such key is in use. */
  rotateKey(key: string, keySha256: string, at: string): Promise<KeptKey | null>;
  /** Returns every seal key, the current one first; null if the workshop does not exist. */
  sealKeys(): Promise<KeptSealKey[] | null>;
  /** Replaces the seal key, or adds the first (`null`). Returns the key in use, if that is not `inPlaceOf` any more. */
  takeSealKey(key: Omit<KeptSealKey, 'retiredAt'>, inPlaceOf: string | null): Promise<KeptSealKey>;
  /** Imports public keys of an earlier deployment, all or none. */
  takeOverSealKeys(keys: RetiredSealKey[], at: string): Promise<TakeOverOutcome>;
  /** Returns its people, by identifier. */
  people(): Promise<EnteredPerson[]>;
  /** Enters a person, or changes what they are and may do. Nobody is ever removed: a right ends on a day. */
  enterPerson(person: EnteredPerson): Promise<EnterPersonOutcome>;
  /** Records that there is, or is about to be, a ledger of this aircraft. */
  noteAircraft(registration: string): Promise<void>;
  /** Records that something was kept of this aircraft: its ledger is never again taken for a new one. */
  noteKept(registration: string): Promise<void>;
  wasKept(registration: string): Promise<boolean>;
  /** Returns the aircraft by registration. An aircraft whose first record was refused may be among them. */
  aircraft(page: PageRequest): Promise<Page<KnownAircraft>>;
}
