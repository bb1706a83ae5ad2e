import { LIMITS } from '../../../core/limits.ts';
import { DamagedRow } from '../damaged-row.ts';
import { packAt } from './packs-table.ts';

/** Pack not yet sent to the index. */
interface Pending extends Record<string, SqlStorageValue> {
  pack: string;
  workshop: string;
  attempts: number;
}

/**
 * Queues a pack for the index. A pack queued again while it is being sent restarts at zero attempts, so that it is not
 * taken as sent.
 */
export function enqueue(sql: SqlStorage, workshop: string, pack: string): void {
  sql.exec('INSERT OR REPLACE INTO outbox (pack, workshop) VALUES (?, ?)', pack, workshop);
}

/** Queues every pack again, for an index that lost them. @returns number of packs */
export function enqueueAll(sql: SqlStorage, workshop: string): number {
  return sql
    .exec('INSERT OR REPLACE INTO outbox (pack, workshop) SELECT pack, ? FROM packs RETURNING pack', workshop)
    .toArray().length;
}

export function isEmpty(sql: SqlStorage): boolean {
  return sql.exec('SELECT 1 FROM outbox LIMIT 1').toArray().length === 0;
}

/**
 * Sends the pending packs to the index, all or none, in a form that may be repeated. Other requests run during the wait
 * for the index, and one of them may change a pack that is being sent: it is then sent again.
 *
 * @returns milliseconds until the next attempt, or null if nothing is left
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

/** Whether a row can be read. A damaged row waits until it is repaired, without delaying the others. */
function isReadable(sql: SqlStorage, pack: string): boolean {
  try {
    packAt(sql, pack);
    return true;
  } catch (error) {
    if (error instanceof DamagedRow) return false;
    throw error;
  }
}

/** Returns the back-off, which doubles from one second to an hour. */
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
