import type { AddLink, KeptLink } from './ledger-calls.ts';

const COLUMNS = 'link, number, audience, createdAt, expiresAt, revokedAt';

const linksWhere = (sql: SqlStorage, rest: string, ...values: (string | number)[]): KeptLink[] =>
  sql.exec(`SELECT ${COLUMNS} FROM links ${rest}`, ...values).toArray() as unknown as KeptLink[];

export function linkAt(sql: SqlStorage, link: string): KeptLink | null {
  return linksWhere(sql, 'WHERE link = ?', link)[0] ?? null;
}

export function linksOf(sql: SqlStorage, number: number): KeptLink[] {
  return linksWhere(sql, 'WHERE number = ? ORDER BY createdAt, link', number);
}

/** Returns a link that may be opened at this time. */
export function openableLink(sql: SqlStorage, tokenSha256: string, at: string): KeptLink | null {
  const [link] = linksWhere(sql, 'WHERE tokenSha256 = ? AND revokedAt IS NULL', tokenSha256);
  return link && Date.parse(at) < Date.parse(link.expiresAt) ? link : null;
}

/** Returns the digests of the tokens of all links that were not revoked. */
export function openTokens(sql: SqlStorage): string[] {
  const rows = sql.exec<{ tokenSha256: string }>('SELECT tokenSha256 FROM links WHERE revokedAt IS NULL').toArray();
  return rows.map(({ tokenSha256 }) => tokenSha256);
}

/** Returns the name of a link: the start of the digest of its token, which does not reveal the token. */
export const linkName = (tokenSha256: string): string => tokenSha256.slice(0, 16);

export function linkFrom({ tokenSha256, audience, expiresAt, at }: AddLink, number: number): KeptLink {
  return { link: linkName(tokenSha256), number, audience, createdAt: at, expiresAt, revokedAt: null };
}

export function writeLink(sql: SqlStorage, link: KeptLink, tokenSha256: string): void {
  const { number, audience, createdAt, expiresAt } = link;
  const statement = `INSERT INTO links (link, tokenSha256, number, audience, createdAt, expiresAt) VALUES (?, ?, ?, ?, ?, ?)`;
  sql.exec(statement, link.link, tokenSha256, number, audience, createdAt, expiresAt);
}

export function markRevoked(sql: SqlStorage, link: string, at: string): void {
  sql.exec('UPDATE links SET revokedAt = ? WHERE link = ?', at, link);
}
