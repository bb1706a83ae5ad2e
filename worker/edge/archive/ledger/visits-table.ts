import { DamagedRow } from '../damaged-row.ts';
import { type Page, type PageRequest, pageOf } from '../page.ts';
import type { Expected, KeepOutcome, KeepVisit, KeptVisit, VisitState } from './ledger-calls.ts';
import { isDigestOfRecord } from './record-digest.ts';

const STATE = 'visit, version, recordSha256, updatedAt, state, pack';

export function visitAt(sql: SqlStorage, visit: string): KeptVisit | null {
  const rows = sql.exec(`SELECT ${STATE}, record FROM visits WHERE visit = ?`, visit).toArray();
  return (rows[0] as unknown as KeptVisit | undefined) ?? null;
}

/**
 * Reads a visit and checks its record against the digest. All use of a record begins here.
 *
 * @throws DamagedRow if the record was changed
 */
export async function wholeVisitAt(sql: SqlStorage, visit: string): Promise<KeptVisit | null> {
  const kept = visitAt(sql, visit);
  if (!kept || (await isDigestOfRecord(kept.record, kept.recordSha256))) return kept;
  const remedy = `Send the same record again (PUT with If-Match: "${kept.recordSha256}"), or restore it from an export: slipmark import`;
  throw new DamagedRow({ what: `record of visit ${visit}`, remedy });
}

/** Replaces the text of a damaged record; an intact one stays. Nothing else of the visit changes. */
export async function mendRecord(sql: SqlStorage, { visit, record, recordSha256 }: KeepVisit): Promise<void> {
  const kept = visitAt(sql, visit);
  if (kept?.recordSha256 !== recordSha256 || (await isDigestOfRecord(kept.record, recordSha256))) return;
  sql.exec('UPDATE visits SET record = ? WHERE visit = ? AND recordSha256 = ?', record, visit, recordSha256);
}

export function stateAt(sql: SqlStorage, visit: string): VisitState | null {
  const rows = sql.exec(`SELECT ${STATE} FROM visits WHERE visit = ?`, visit).toArray();
  return (rows[0] as unknown as VisitState | undefined) ?? null;
}

export function visitsAfter(sql: SqlStorage, { after, limit }: PageRequest): Page<VisitState> {
  const rows = sql.exec(`SELECT ${STATE} FROM visits WHERE visit > ? ORDER BY visit LIMIT ?`, after ?? '', limit + 1);
  return pageOf(rows.toArray() as unknown as VisitState[], limit, ({ visit }) => visit);
}

/** Returns why a visit cannot be written as requested; undefined if it can. */
export function refusalToKeep(kept: VisitState | null, expected: Expected): KeepOutcome | undefined {
  if (expected.kind === 'absent') return kept ? { kind: 'exists' } : undefined;
  if (expected.kind === 'present') return kept ? undefined : { kind: 'moved' };
  if (expected.kind === 'unstated') return kept ? { kind: 'condition-required' } : undefined;
  return kept && expected.recordSha256.includes(kept.recordSha256) ? undefined : { kind: 'moved' };
}

/** Returns the state after a write, which still names the pack sealed from an earlier version. */
export function stateAfter(kept: VisitState | null, { visit, recordSha256, at }: KeepVisit): VisitState {
  const version = (kept?.version ?? 0) + 1;
  return { visit, version, recordSha256, updatedAt: at, state: 'working', pack: kept?.pack ?? null };
}

export function writeVisit(sql: SqlStorage, state: VisitState, record: string): void {
  sql.exec(
    `INSERT INTO visits (visit, record, recordSha256, version, updatedAt, state, pack) VALUES (?, ?, ?, ?, ?, ?, ?)
     ON CONFLICT (visit) DO UPDATE SET record = excluded.record, recordSha256 = excluded.recordSha256,
       version = excluded.version, updatedAt = excluded.updatedAt, state = excluded.state`,
    state.visit,
    record,
    state.recordSha256,
    state.version,
    state.updatedAt,
    state.state,
    state.pack,
  );
}

export function markReleased(sql: SqlStorage, visit: string, pack: string): void {
  sql.exec(`UPDATE visits SET state = 'released', pack = ? WHERE visit = ?`, pack, visit);
}
