import { LIMITS } from '../../../core/limits.ts';
import { DAY_MS } from '../../../core/units/calendar.ts';
import type { RequestKey } from './ledger-calls.ts';

/** Outcome of an earlier request under a key: the pack or link in its response. */
export interface RequestOutcome {
  answer: string;
  /** Whether the response was a pack released before, so that the request made none. */
  wasStanding: boolean;
}

export type Earlier = { kind: 'first' } | ({ kind: 'repeated' } & RequestOutcome) | { kind: 'key-reused' };

export function earlierRequest(sql: SqlStorage, request: RequestKey | undefined): Earlier {
  if (!request) return { kind: 'first' };
  const statement = 'SELECT fingerprintSha256, answer, wasStanding FROM keyedRequests WHERE keySha256 = ?';
  type Row = { fingerprintSha256: string; answer: string; wasStanding: number };
  const [row] = sql.exec<Row>(statement, request.keySha256).toArray();
  if (!row) return { kind: 'first' };
  if (row.fingerprintSha256 !== request.fingerprintSha256) return { kind: 'key-reused' };
  return { kind: 'repeated', answer: row.answer, wasStanding: row.wasStanding === 1 };
}

export function rememberRequest(
  sql: SqlStorage,
  request: RequestKey | undefined,
  { answer, wasStanding }: RequestOutcome,
  at: string,
): void {
  if (!request) return;
  const oldest = new Date(Date.parse(at) - LIMITS.requestKeyDays * DAY_MS).toISOString();
  sql.exec('DELETE FROM keyedRequests WHERE at < ?', oldest);
  const { keySha256, fingerprintSha256 } = request;
  const statement =
    'INSERT INTO keyedRequests (keySha256, fingerprintSha256, answer, wasStanding, at) VALUES (?, ?, ?, ?, ?)';
  sql.exec(statement, keySha256, fingerprintSha256, answer, wasStanding ? 1 : 0, at);
}
