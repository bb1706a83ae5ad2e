import { type Page, type PageRequest, pageOf } from '../page.ts';
import type { KnownAircraft } from './workshop-calls.ts';

// The list of aircraft is stored with the keys of the workshop, so that a back-up does not depend on D1.

/** Records a registration in the list of aircraft. Done before the ledger is written, so that none is ever left out. */
export function noteAircraft(sql: SqlStorage, registration: string): void {
  sql.exec('INSERT OR IGNORE INTO aircraft (registration) VALUES (?)', registration);
}

/** Whether anything was ever kept of the aircraft, as far as that was recorded. */
export function wasKept(sql: SqlStorage, registration: string): boolean {
  const statement = 'SELECT 1 FROM aircraft WHERE registration = ? AND wasKept = 1';
  return sql.exec(statement, registration).toArray().length > 0;
}

export function noteKept(sql: SqlStorage, registration: string): void {
  noteAircraft(sql, registration);
  sql.exec('UPDATE aircraft SET wasKept = 1 WHERE registration = ? AND wasKept = 0', registration);
}

export function aircraftAfter(sql: SqlStorage, { after, limit }: PageRequest): Page<KnownAircraft> {
  const statement = 'SELECT registration FROM aircraft WHERE registration > ? ORDER BY registration LIMIT ?';
  const rows = sql.exec(statement, after ?? '', limit + 1).toArray();
  return pageOf(rows as unknown as KnownAircraft[], limit, ({ registration }) => registration);
}
