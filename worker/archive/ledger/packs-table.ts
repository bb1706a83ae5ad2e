import type { ArchiveFacts, PackPlace } from '../../pipeline.ts';
import { type Page, type PageRequest, pageOf } from '../page.ts';
import type { CommitPack, KeptPack, Withdrawal } from './ledger-calls.ts';

type Row = Omit<KeptPack, 'summary' | 'withdrawal'> & { summary: string; withdrawal: string | null };

const COLUMNS = 'summary, manifestSha256, pdfSha256, recordSha256, documentsSha256, previous, supersededBy, withdrawal';

const packsWhere = (sql: SqlStorage, rest: string, ...values: (string | number)[]): KeptPack[] =>
  sql
    .exec(`SELECT ${COLUMNS} FROM packs ${rest}`, ...values)
    .toArray()
    .map((row) => {
      const pack = row as unknown as Row;
      const { summary, withdrawal } = pack;
      return { ...pack, summary: JSON.parse(summary), withdrawal: withdrawal === null ? null : JSON.parse(withdrawal) };
    });

export function packAt(sql: SqlStorage, pack: string): KeptPack | null {
  return packsWhere(sql, 'WHERE pack = ?', pack)[0] ?? null;
}

/** The newest issue of a pack number. */
export function newestIssue(sql: SqlStorage, number: number): KeptPack | null {
  return packsWhere(sql, 'WHERE number = ? ORDER BY issue DESC LIMIT 1', number)[0] ?? null;
}

/** The newest issue of the highest pack number: what stands for the aircraft today. */
export function newestPack(sql: SqlStorage): KeptPack | null {
  return packsWhere(sql, 'ORDER BY number DESC, issue DESC LIMIT 1')[0] ?? null;
}

function newestOfVisit(sql: SqlStorage, visit: string): KeptPack | null {
  return packsWhere(sql, 'WHERE visit = ? ORDER BY issue DESC LIMIT 1', visit)[0] ?? null;
}

export function packsBefore(sql: SqlStorage, { after, limit }: PageRequest): Page<KeptPack> {
  const [number, issue] = (after ?? '').split('.').map(Number);
  const where = 'WHERE (number, issue) < (?, ?) ORDER BY number DESC, issue DESC LIMIT ?';
  const rows = packsWhere(sql, where, number || Number.MAX_SAFE_INTEGER, issue || 0, limit + 1);
  return pageOf(rows, limit, ({ summary }) => `${summary.number}.${summary.issue}`);
}

/**
 * The pack that stood when this visit was released first, or stands now where it was not: a correction of an old visit is
 * not to be checked against what came after it.
 */
export function factsFor(sql: SqlStorage, visit: string): ArchiveFacts {
  const before = newestOfVisit(sql, visit)?.summary.number ?? Number.MAX_SAFE_INTEGER;
  const [last] = packsWhere(sql, 'WHERE number < ? ORDER BY number DESC, issue DESC LIMIT 1', before);
  if (!last) return {};
  const { pack, issuedAt, visit: lastVisit } = last.summary;
  return { lastPack: { pack, issuedAt, visit: lastVisit, recordSha256: last.recordSha256 } };
}

/** A first release takes the next number; a release after an amendment is the next issue of the same number. */
export function placeFor(sql: SqlStorage, registration: string, visit: string): PackPlace {
  const superseded = newestOfVisit(sql, visit);
  const number = superseded?.summary.number ?? (newestPack(sql)?.summary.number ?? 0) + 1;
  const issue = (superseded?.summary.issue ?? 0) + 1;
  const [latest] = packsWhere(sql, 'ORDER BY rowid DESC LIMIT 1');
  return {
    pack: `${registration}-P${number}-${issue}`,
    number,
    issue,
    visit,
    ...(latest && { previous: { pack: latest.summary.pack, manifestSha256: latest.manifestSha256 } }),
    ...(superseded && { supersedes: superseded.summary.pack }),
  };
}

export function markWithdrawn(sql: SqlStorage, pack: string, withdrawal: Withdrawal): void {
  sql.exec('UPDATE packs SET withdrawal = ? WHERE pack = ?', JSON.stringify(withdrawal), pack);
}

/** A pack to be written, with the pack that was sealed before it. */
type NewPack = Pick<CommitPack, 'place' | 'digests' | 'summary'> & { previous: string | null };

export function writePack(sql: SqlStorage, { place, digests, summary, previous }: NewPack): void {
  sql.exec(
    `INSERT INTO packs (pack, number, issue, visit, manifestSha256, pdfSha256, recordSha256, documentsSha256, previous, summary)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
    place.pack,
    place.number,
    place.issue,
    place.visit,
    digests.manifestSha256,
    digests.pdfSha256,
    digests.recordSha256,
    digests.documentsSha256,
    previous,
    JSON.stringify(summary),
  );
  if (place.supersedes) sql.exec('UPDATE packs SET supersededBy = ? WHERE pack = ?', place.pack, place.supersedes);
}
