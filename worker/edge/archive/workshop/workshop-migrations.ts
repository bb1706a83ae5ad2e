import type { Migration } from '../migrate.ts';

/** Tables of a workshop. Only added to, never edited: every existing workshop has taken the earlier steps. */
export const WORKSHOP_MIGRATIONS: readonly Migration[] = [
  `
  CREATE TABLE workshop (name TEXT NOT NULL, createdAt TEXT NOT NULL);
  CREATE TABLE keys (
    key TEXT PRIMARY KEY,
    keySha256 TEXT NOT NULL UNIQUE,
    label TEXT NOT NULL,
    scopes TEXT NOT NULL,
    createdAt TEXT NOT NULL,
    revokedAt TEXT
  );
  `,
  `
  CREATE TABLE sealKeys (
    kid TEXT PRIMARY KEY,
    publicJwk TEXT NOT NULL,
    wrapped TEXT NOT NULL,
    createdAt TEXT NOT NULL,
    retiredAt TEXT
  );
  `,
  `
  ALTER TABLE keys ADD COLUMN person TEXT;
  ALTER TABLE keys ADD COLUMN lastUsedAt TEXT;
  `,
  `
  CREATE TABLE aircraft (registration TEXT PRIMARY KEY) WITHOUT ROWID;
  `,
  `
  ALTER TABLE aircraft ADD COLUMN wasKept INTEGER NOT NULL DEFAULT 0;
  CREATE TABLE people (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    capacity TEXT NOT NULL,
    licence TEXT,
    scope TEXT NOT NULL,
    validFrom TEXT,
    validUntil TEXT,
    enteredAt TEXT NOT NULL,
    enteredBy TEXT NOT NULL
  ) WITHOUT ROWID;
  `,
];
