import type { PackPlace, PackSummary } from '../../../core/core.ts';
import { canonicalJson } from '../../../core/pack/canonical-json.ts';
import { columnJson } from '../damaged-row.ts';
import { type Page, type PageRequest, pageOf } from '../page.ts';
import type {
  Aftermath,
  ChainEntry,
  CommitPack,
  KeptPack,
  Relisted,
  VisitAmongPacks,
  Withdrawal,
} from './ledger-calls.ts';

type Row = Omit<KeptPack, 'summary' | 'withdrawal' | 'isShared' | 'isRestored'> & {
  pack: string;
  number: number;
  issue: number;
  visit: string;
  summary: string;
  withdrawal: string | null;
  isShared: number;
  isRestored: number;
};

const DIGESTS = 'manifestSha256, pdfSha256, recordSha256, documentsSha256, factsSha256';
const COLUMNS = `pack, number, issue, visit, summary, ${DIGESTS}, previous, supersededBy, withdrawal, isShared, isRestored`;

const packsWhere = (sql: SqlStorage, rest: string, ...values: (string | number)[]): KeptPack[] =>
  sql
    .exec(`SELECT ${COLUMNS} FROM packs ${rest}`, ...values)
    .toArray()
    .map((row) => {
      const { pack: name, number, issue, visit, ...pack } = row as unknown as Row;
      const place = { pack: name, number, issue, visit };
      const damage = { what: `row of the pack ${name}`, remedy: MENDED };
      return {
        ...pack,
        summary: columnJson<PackSummary>(pack.summary, (value) => isSummaryOf(place, value), damage),
        withdrawal: pack.withdrawal === null ? null : columnJson<Withdrawal>(pack.withdrawal, isObject, damage),
        isShared: pack.isShared === 1,
        isRestored: pack.isRestored === 1,
      };
    });

const MENDED =
  'slipmark reindex restores it from the sealed files; a pack of the first version needs a back-up of the storage';

const isObject = (value: unknown): boolean => typeof value === 'object' && value !== null;

const isSummaryOf = (place: object, value: unknown): boolean =>
  isObject(value) && Object.entries(place).every(([key, held]) => (value as Record<string, unknown>)[key] === held);

/** Replaces the summaries that lists show by the sealed ones. @returns number of summaries that differed */
export function mendSummaries(sql: SqlStorage, summaries: readonly PackSummary[]): number {
  const statement =
    'UPDATE packs SET summary = ? WHERE pack = ? AND number = ? AND issue = ? AND visit = ? AND summary <> ? RETURNING pack';
  return summaries.flatMap((summary) => {
    const { pack, number, issue, visit } = summary;
    const kept = sql.exec<{ summary: string }>('SELECT summary FROM packs WHERE pack = ?', pack).toArray()[0]?.summary;
    const isSame = kept !== undefined && canonicalOf(kept) === canonicalJson(summary);
    const text = JSON.stringify(summary);
    return isSame ? [] : sql.exec(statement, text, pack, number, issue, visit, text).toArray();
  }).length;
}

function canonicalOf(text: string): string | undefined {
  try {
    return canonicalJson(JSON.parse(text));
  } catch {
    return undefined;
  }
}

export function packAt(sql: SqlStorage, pack: string): KeptPack | null {
  return packsWhere(sql, 'WHERE pack = ?', pack)[0] ?? null;
}

/** Returns the newest issue of a pack number. */
export function newestIssue(sql: SqlStorage, number: number): KeptPack | null {
  return packsWhere(sql, 'WHERE number = ? ORDER BY issue DESC LIMIT 1', number)[0] ?? null;
}

/** Returns the newest issue of the highest pack number: the current pack of the aircraft. */
export function newestPack(sql: SqlStorage): KeptPack | null {
  return packsWhere(sql, 'ORDER BY number DESC, issue DESC LIMIT 1')[0] ?? null;
}

/** Returns what happened to a pack after it was sealed. */
export function aftermathOf(sql: SqlStorage, { summary }: KeptPack): Aftermath {
  const { number, pack } = summary;
  const newest = newestPack(sql);
  const sealedSince = 'rowid > (SELECT rowid FROM packs WHERE pack = ?)';
  // The order follows from the chain: a timestamp is too early while the clock is back.
  const entryOf = (kind: ChainEntry['kind'], name: string) =>
    `(SELECT max(seq) FROM chain WHERE kind = '${kind}' AND instr(body, '"pack":"' || ${name} || '"') > 0)`;
  const withdrawnSince = `withdrawal IS NOT NULL AND ${entryOf('pack-withdrawn', 'packs.pack')} > ${entryOf('pack-sealed', '?')}`;
  const where = `WHERE number < ? AND supersededBy IS NULL AND (${sealedSince} OR (${withdrawnSince})) ORDER BY number`;
  const corrected = packsWhere(sql, where, number, pack, pack);
  return { later: newest && newest.summary.number > number ? newest : null, corrected };
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
 * Returns the newest issue of every other pack, first those before this visit was released, then those after it: a
 * correction of an old visit must not be checked against later packs. A visit that was never released comes after all
 * of them.
 */
export function aroundVisit(sql: SqlStorage, visit: string): Pick<VisitAmongPacks, 'own' | 'before' | 'after'> {
  const newest = newestOfVisit(sql, visit);
  const own = newest?.summary.number ?? Number.MAX_SAFE_INTEGER;
  const packs = newestIssues(sql).filter(({ summary }) => summary.number !== own);
  return {
    own: newest,
    before: packs.filter(({ summary }) => summary.number < own),
    after: packs.filter(({ summary }) => summary.number > own),
  };
}

/** Returns the newest issue of every pack, oldest first. */
export function newestIssues(sql: SqlStorage): KeptPack[] {
  return packsWhere(sql, 'WHERE supersededBy IS NULL ORDER BY number');
}

/**
 * Returns the place of the next pack: a first release takes the next number; a release after an amendment is the next
 * issue of the same number.
 */
export function placeFor(sql: SqlStorage, registration: string, visit: string): PackPlace {
  const superseded = newestOfVisit(sql, visit);
  const number = superseded?.summary.number ?? (newestPack(sql)?.summary.number ?? 0) + 1;
  const issue = (superseded?.summary.issue ?? 0) + 1;
  const [latest] = packsWhere(sql, 'ORDER BY rowid DESC LIMIT 1');
  const before = aroundVisit(sql, visit).before.map(({ summary, recordSha256, withdrawal }) => {
    return { pack: summary.pack, issuedAt: summary.issuedAt, recordSha256, isWithdrawn: withdrawal !== null };
  });
  return {
    pack: `${registration}-P${number}-${issue}`,
    number,
    issue,
    visit,
    before,
    ...(latest && { previous: { pack: latest.summary.pack, manifestSha256: latest.manifestSha256 } }),
    ...(superseded && { supersedes: superseded.summary.pack }),
  };
}

export function markWithdrawn(sql: SqlStorage, pack: string, withdrawal: Withdrawal): void {
  sql.exec('UPDATE packs SET withdrawal = ? WHERE pack = ?', JSON.stringify(withdrawal), pack);
}

/** Pack to be written, with the pack sealed before it. */
type NewPack = Pick<CommitPack, 'place' | 'digests' | 'summary'> & { previous: string | null; isRestored: boolean };

export function writePack(sql: SqlStorage, { place, digests, summary, previous, isRestored }: NewPack): void {
  sql.exec(
    `INSERT INTO packs (pack, number, issue, visit, ${DIGESTS}, previous, summary, isShared, isRestored)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0, ?)`,
    place.pack,
    place.number,
    place.issue,
    place.visit,
    digests.manifestSha256,
    digests.pdfSha256,
    digests.recordSha256,
    digests.documentsSha256,
    digests.factsSha256,
    previous,
    JSON.stringify(summary),
    isRestored ? 1 : 0,
  );
  if (place.supersedes) sql.exec('UPDATE packs SET supersededBy = ? WHERE pack = ?', place.pack, place.supersedes);
}

/** Returns every pack with the digests of its file and of its facts. */
export function filesOfPacks(sql: SqlStorage): Relisted['packs'] {
  const statement = 'SELECT pack, pdfSha256, factsSha256 FROM packs ORDER BY pack';
  return sql.exec(statement).toArray() as unknown as Relisted['packs'];
}
