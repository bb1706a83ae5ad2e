import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';

/** The SQLite files of a kind of object in the storage of the embedded service. */
function databasesIn(folder: string): DatabaseSync[] {
  return readdirSync(folder)
    .filter((name) => /^[0-9a-f]{64}\.sqlite$/.test(name))
    .map((name) => new DatabaseSync(join(folder, name)));
}

const NUMBERS = 'WITH RECURSIVE n (i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < ? - 1)';

/** Moments an hour apart, long past. */
const MOMENT = `strftime('%Y-%m-%dT%H:00:00.000Z', '2010-01-01', '+' || i || ' hours')`;

const summary = (registration: string, number: string): string =>
  `json_object('registration', ${registration}, 'pack', ${registration} || '-P' || ${number} || '-1', 'number', ${number}, 'issue', 1,
   'visit', 'v' || ${number}, 'issuedAt', ${MOMENT}, 'releasedBy', 'Nobody', 'regime', 'generic', 'emptyMassKg', 301.5, 'emptyArmMm', 312.25,
   'supersedes', NULL, 'findings', json_object('cautions', 2, 'notes', 1))`;

/**
 * Fills the index with packs of one workshop, ten of each aircraft. The service must be stopped.
 *
 * @param rows how many stand there afterwards, besides those of real releases
 */
export function fillIndex(storage: string, workshop: string, rows: number): void {
  for (const database of databasesIn(join(storage, 'index/miniflare-D1DatabaseObject'))) {
    const registration = `printf('QX-%05d', i % ((? + 9) / 10))`.replace('?', String(rows));
    const statement = `${NUMBERS} INSERT OR REPLACE INTO packs (workshop, pack, registration, issuedAt, supersededBy, summary, withdrawnAt)
      SELECT '${workshop}', ${registration} || '-P' || (i + 1) || '-1', ${registration}, ${MOMENT}, NULL, ${summary(registration, '(i + 1)')}, NULL FROM n`;
    database.prepare(`DELETE FROM packs WHERE registration LIKE 'QX-%'`).run();
    database.prepare(statement).run(rows);
    database.close();
  }
}

/**
 * Puts a long history before that of an aircraft: packs and entries of the chain, as many as told. The service must be stopped.
 *
 * @param visit by which its ledger is found
 */
export function fillLedger(storage: string, visit: string, packs: number): void {
  for (const database of databasesIn(join(storage, 'objects/slipmark-Ledger'))) {
    if (database.prepare('SELECT 1 FROM visits WHERE visit = ?').all(visit).length > 0) {
      const blob = 'lower(hex(randomblob(32)))';
      database.prepare('DELETE FROM packs WHERE number >= 1000').run();
      const statement = `${NUMBERS} INSERT INTO packs (pack, number, issue, visit, manifestSha256, pdfSha256, recordSha256, documentsSha256, summary)
        SELECT 'Q-LONG-P' || (i + 1000) || '-1', i + 1000, 1, 'v' || (i + 1000), ${blob}, ${blob}, ${blob}, ${blob},
        ${summary(`'Q-LONG'`, '(i + 1000)')} FROM n`;
      database.prepare(statement).run(packs);
      const head = database.prepare('SELECT max(seq) AS seq FROM chain').all()[0]?.seq ?? 0;
      const chain = `${NUMBERS} INSERT INTO chain SELECT ${Number(head)} + i + 1, ${MOMENT}, 'visit-kept', '{}', ${blob}, ${blob} FROM n`;
      database.prepare(chain).run(packs);
    }
    database.close();
  }
}
