import { LIMITS } from '../../../core/limits.ts';
import type { KeptLink, Opened, Opening, UsedLink } from './ledger-calls.ts';

/** Records that a link was opened; for a link opened very often, the first openings are dropped. */
export function noteOpening(sql: SqlStorage, link: string, at: string, what: Opened): void {
  sql.exec('INSERT INTO openings VALUES (?, ?, ?)', link, at, what);
  const statement =
    'DELETE FROM openings WHERE link = ? AND rowid <= (SELECT rowid FROM openings WHERE link = ? ORDER BY rowid DESC LIMIT 1 OFFSET ?)';
  sql.exec(statement, link, link, LIMITS.linkOpenings);
}

/** Returns a link with its latest openings. */
export function withOpenings(sql: SqlStorage, link: KeptLink): UsedLink {
  const { n } = sql.exec<{ n: number }>('SELECT count(*) AS n FROM openings WHERE link = ?', link.link).one();
  const statement = 'SELECT at, what FROM openings WHERE link = ? ORDER BY rowid DESC LIMIT ?';
  const openings = sql.exec(statement, link.link, LIMITS.openingsListed).toArray() as unknown as Opening[];
  return { ...link, timesOpened: n, openings };
}
