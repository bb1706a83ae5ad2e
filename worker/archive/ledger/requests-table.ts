import { LIMITS } from '../../limits.ts';
import type { RequestKey } from './ledger-calls.ts';

/** What an earlier request under a key came to: the name of the pack or link that it made. */
export type Earlier = { kind: 'first' } | { kind: 'repeated'; answer: string } | { kind: 'key-reused' };

const DAY_MS = 86_400_000;

export function earlierRequest(sql: SqlStorage, request: RequestKey | undefined): Earlier {
  if (!request) return { kind: 'first' };
  const statement = 'SELECT fingerprintSha256, answer FROM requests WHERE keySha256 = ?';
  const [row] = sql.exec<{ fingerprintSha256: string; answer: string }>(statement, request.keySha256).toArray();
  if (!row) return { kind: 'first' };
  if (row.fingerprintSha256 !== request.fingerprintSha256) return { kind: 'key-reused' };
  return { kind: 'repeated', answer: row.answer };
}

export function rememberRequest(sql: SqlStorage, request: RequestKey | undefined, answer: string, at: string): void {
  if (!request) return;
  const oldest = new Date(Date.parse(at) - LIMITS.requestKeyDays * DAY_MS).toISOString();
  sql.exec('DELETE FROM requests WHERE at < ?', oldest);
  sql.exec('INSERT INTO requests VALUES (?, ?, ?, ?)', request.keySha256, request.fingerprintSha256, answer, at);
}
