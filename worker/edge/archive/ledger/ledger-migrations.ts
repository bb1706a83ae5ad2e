import type { Migration } from '../migrate.ts';

/** Tables of a ledger. Only added to, never edited: every existing ledger has taken the earlier steps. */
export const LEDGER_MIGRATIONS: readonly Migration[] = [
  `
  CREATE TABLE visits (
    visit TEXT PRIMARY KEY,
    record TEXT NOT NULL,
    recordSha256 TEXT NOT NULL,
    version INTEGER NOT NULL,
    updatedAt TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('working', 'released')),
    pack TEXT
  );
  CREATE TABLE packs (
    pack TEXT PRIMARY KEY,
    number INTEGER NOT NULL,
    issue INTEGER NOT NULL,
    visit TEXT NOT NULL,
    manifestSha256 TEXT NOT NULL,
    pdfSha256 TEXT NOT NULL,
    recordSha256 TEXT NOT NULL,
    documentsSha256 TEXT NOT NULL,
    previous TEXT,
    supersededBy TEXT,
    summary TEXT NOT NULL,
    UNIQUE (number, issue)
  );
  CREATE TABLE links (
    link TEXT PRIMARY KEY,
    tokenSha256 TEXT NOT NULL UNIQUE,
    number INTEGER NOT NULL,
    audience TEXT NOT NULL,
    createdAt TEXT NOT NULL,
    expiresAt TEXT NOT NULL,
    revokedAt TEXT
  );
  CREATE TABLE chain (
    seq INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    kind TEXT NOT NULL,
    body TEXT NOT NULL,
    previous TEXT NOT NULL,
    digest TEXT NOT NULL UNIQUE
  );
  CREATE TABLE requests (
    keySha256 TEXT PRIMARY KEY,
    fingerprintSha256 TEXT NOT NULL,
    answer TEXT NOT NULL,
    at TEXT NOT NULL
  );
  CREATE TABLE outbox (
    pack TEXT PRIMARY KEY,
    workshop TEXT NOT NULL,
    attempts INTEGER NOT NULL DEFAULT 0
  );
  `,
  `
  ALTER TABLE packs ADD COLUMN withdrawal TEXT;
  CREATE TABLE openings (link TEXT NOT NULL, at TEXT NOT NULL, what TEXT NOT NULL);
  CREATE INDEX openingsOfLink ON openings (link, at);
  `,
  // The files of existing packs are in the former common place of all workshops.
  `
  ALTER TABLE packs ADD COLUMN isShared INTEGER NOT NULL DEFAULT 1;
  ALTER TABLE packs ADD COLUMN factsSha256 TEXT;
  `,
  // Nothing is sealed before the latest time in a ledger, which need not be that of its last entry.
  `
  CREATE INDEX chainByMoment ON chain (at);
  `,
  `
  ALTER TABLE packs ADD COLUMN isRestored INTEGER NOT NULL DEFAULT 0;
  `,
  // A separate table, because earlier code names no columns when it writes to `requests`. It had a mark within the
  // answer.
  `
  CREATE TABLE keyedRequests (
    keySha256 TEXT PRIMARY KEY,
    fingerprintSha256 TEXT NOT NULL,
    answer TEXT NOT NULL,
    wasStanding INTEGER NOT NULL,
    at TEXT NOT NULL
  );
  INSERT INTO keyedRequests
    SELECT keySha256, fingerprintSha256, replace(answer, ' standing', ''), answer LIKE '% standing', at FROM requests;
  DELETE FROM requests;
  `,
];
