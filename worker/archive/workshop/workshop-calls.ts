/** What a key may be used for. */
export const KEY_SCOPES = ['records', 'release', 'links', 'admin'] as const;
export type KeyScope = (typeof KEY_SCOPES)[number];

/** A key as the workshop knows it: never the key itself, only the digest of its text. */
export interface KeptKey {
  key: string;
  label: string;
  scopes: KeyScope[];
  createdAt: string;
  revokedAt: string | null;
}

export interface AddKey {
  keySha256: string;
  label: string;
  scopes: KeyScope[];
  at: string;
}

export type AddKeyOutcome = { kind: 'added'; key: KeptKey } | { kind: 'full' };
export type CreateOutcome = { kind: 'created'; key: KeptKey } | { kind: 'exists' };

/** What can be asked of a workshop: who may come in. */
export interface WorkshopCalls {
  /** Names the workshop and gives it its first key; only once. */
  create(name: string, key: AddKey): Promise<CreateOutcome>;
  /** The key with this digest, or null where it is unknown or revoked. */
  authenticate(keySha256: string): Promise<KeptKey | null>;
  addKey(key: AddKey): Promise<AddKeyOutcome>;
  keys(): Promise<KeptKey[]>;
  revokeKey(key: string, at: string): Promise<KeptKey | null>;
}
