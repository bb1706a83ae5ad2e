import { LIMITS } from '../../../core/limits.ts';
import { DamagedRow } from '../damaged-row.ts';
import { packAt } from './packs-table.ts';

/** Packs that the index has yet to hear of. */
interface Pending extends Record<string, SqlStorageValue> {
  pack: string;
  workshop: string;
  attempts: number;
}

/** A pack that is told anew while it is being told counts from nothing again, so that it is not taken for told. */
export function enqueue(sql: SqlStorage, workshop: string, pack: string): void {
  sql.exec('INSERT OR REPLACE INTO outbox (pack, workshop) VALUES (?, ?)', pack, workshop);
}

/** Has every pack told again, as to an index that lost them. @returns how many there are */
export function enqueueAll(sql: SqlStorage, workshop: string): number {
  return sql
    .exec('INSERT OR REPLACE INTO outbox (pack, workshop) SELECT pack, ? FROM packs RETURNING pack', workshop)
    .toArray().length;
}

export function isEmpty(sql: SqlStorage): boolean {
  return sql.exec('SELECT 1 FROM outbox LIMIT 1').toArray().length === 0;
}

/**
 * Tells the index of the pending packs, all or none, in a form that may be repeated. Other requests run while the index is
 * waited for, and one of them may change a pack that is just being told: it is then told again.
 *
 * @returns milliseconds until the next attempt, or null when nothing is left
 */
export async function drain(sql: SqlStorage, index: D1Database): Promise<number | null> {
  const batch = sql.exec<Pending>('SELECT * FROM outbox ORDER BY pack LIMIT ?', LIMITS.outboxBatch).toArray();
  for (const { pack } of batch) sql.exec('UPDATE outbox SET attempts = attempts + 1 WHERE pack = ?', pack);
  const waitMs = backOffMs(Math.max(...batch.map(({ attempts }) => attempts)));
  const readable = batch.filter(({ pack }) => isReadable(sql, pack));
  try {
    const statements = readable.flatMap(({ pack, workshop }) => statementsFor(sql, index, workshop, pack));
    if (statements.length > 0) await index.batch(statements);
  } catch {
    return waitMs;
  }
  for (const { pack } of readable) sql.exec('DELETE FROM outbox WHERE pack = ? AND attempts > 0', pack);
  if (isEmpty(sql)) return null;
  return readable.length < batch.length ? waitMs : 0;
}

/** A row that is damaged waits until it is mended, and keeps none of the others waiting. */
function isReadable(sql: SqlStorage, pack: string): boolean {
  try {
    packAt(sql, pack);
    return true;
  } catch (error) {
    if (error instanceof DamagedRow) return false;
    throw error;
  }
}

/** Doubles from one second to an hour. */
export function backOffMs(attempts: number): number {
  return Math.min(3_600_000, 1_000 * 2 ** attempts);
}

function statementsFor(sql: SqlStorage, index: D1Database, workshop: string, pack: string): D1PreparedStatement[] {
  const kept = packAt(sql, pack);
  if (!kept) return [];
  const { registration, issuedAt, supersedes } = kept.summary;
  const upsert = index
    .prepare(
      `INSERT INTO packs (workshop, pack, registration, issuedAt, supersededBy, summary, withdrawnAt) VALUES (?, ?, ?, ?, ?, ?, ?)
       ON CONFLICT (workshop, pack) DO UPDATE SET
         supersededBy = excluded.supersededBy, summary = excluded.summary, withdrawnAt = excluded.withdrawnAt`,
    )
    .bind(
      workshop,
      pack,
      registration,
      issuedAt,
      kept.supersededBy,
      JSON.stringify(kept.summary),
      kept.withdrawal?.at ?? null,
    );
  if (!supersedes) return [upsert];
  const supersede = index.prepare('UPDATE packs SET supersededBy = ? WHERE workshop = ? AND pack = ?');
  return [upsert, supersede.bind(pack, workshop, supersedes)];
}
