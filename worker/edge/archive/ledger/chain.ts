import { canonicalJson } from '../../../core/pack/canonical-json.ts';
import { sha256 } from '../../../core/pack/digest.ts';
import { type Page, type PageRequest, pageOf } from '../page.ts';
import type { Actor, ChainEntry } from './ledger-calls.ts';

/** Predecessor of the first entry of a chain. */
export const GENESIS = '0'.repeat(64);

/** Event before it has its place in the chain. Its body is canonical JSON. */
export interface Event {
  at: string;
  kind: ChainEntry['kind'];
  body: Readonly<Record<string, string | number | null>>;
}

/** Form of a body that names the key of the entry. Earlier bodies have no form. */
export const BODY_FORM = 2;

/** Creates an event caused by a key. */
export function eventBy(actor: Actor, kind: Event['kind'], at: string, body: Event['body']): Event {
  return { at, kind, body: { form: BODY_FORM, ...body, key: actor.key, person: actor.person } };
}

/**
 * Returns the latest time of any entry; undefined if there is none. An entry made while the clock was back has an
 * earlier time.
 */
export function latestEntryAt(sql: SqlStorage): string | undefined {
  return sql.exec<{ at: string }>('SELECT at FROM chain ORDER BY at DESC LIMIT 1').toArray()[0]?.at;
}

export function headOf(sql: SqlStorage): { seq: number; digest: string } {
  const row = sql.exec<{ seq: number; digest: string }>('SELECT seq, digest FROM chain ORDER BY seq DESC LIMIT 1');
  return row.toArray()[0] ?? { seq: 0, digest: GENESIS };
}

/** Returns the entry that would follow the head of the chain. */
export async function entryAfter(head: { seq: number; digest: string }, event: Event): Promise<ChainEntry> {
  const body = canonicalJson(event.body);
  const entry = { seq: head.seq + 1, at: event.at, kind: event.kind, body, previous: head.digest };
  return { ...entry, digest: await digestOf(entry) };
}

/** Returns the digest of an entry, which proves its content and all before it. */
export function digestOf({ previous, seq, at, kind, body }: Omit<ChainEntry, 'digest'>): Promise<string> {
  return sha256(canonicalJson([previous, seq, at, kind, body]));
}

export function append(sql: SqlStorage, { seq, at, kind, body, previous, digest }: ChainEntry): void {
  const columns = 'seq, at, kind, body, previous, digest';
  sql.exec(`INSERT INTO chain (${columns}) VALUES (?, ?, ?, ?, ?, ?)`, seq, at, kind, body, previous, digest);
}

export function entriesAfter(sql: SqlStorage, { after, limit }: PageRequest): Page<ChainEntry> {
  const from = Number(after ?? 0);
  const rows = sql.exec('SELECT * FROM chain WHERE seq > ? ORDER BY seq LIMIT ?', from, limit + 1).toArray();
  return pageOf(rows as unknown as ChainEntry[], limit, (entry) => String(entry.seq));
}

/** Returns the first entry that does not follow from the one before it; undefined if the chain is intact. */
export async function brokenEntry(entries: readonly ChainEntry[], start = GENESIS): Promise<ChainEntry | undefined> {
  let previous = start;
  for (const entry of entries) {
    if (entry.previous !== previous || entry.digest !== (await digestOf(entry))) return entry;
    previous = entry.digest;
  }
  return undefined;
}
