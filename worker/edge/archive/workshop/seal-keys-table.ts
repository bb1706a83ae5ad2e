import { publicSealKey } from '../../../core/seal/key.ts';
import { DamagedRow } from '../damaged-row.ts';
import type { KeptSealKey, RetiredSealKey, TakeOverOutcome } from './workshop-calls.ts';

/** Returns all seal keys, the current one first. */
export function sealKeysIn(sql: SqlStorage): KeptSealKey[] {
  const statement = 'SELECT * FROM sealKeys ORDER BY retiredAt IS NOT NULL, createdAt DESC, kid';
  return sql.exec(statement).toArray() as unknown as KeptSealKey[];
}

/**
 * Returns all seal keys, the current one first, each checked against the name that follows from it (RFC 7638).
 *
 * @throws DamagedRow if a published half differs from the key of the seals
 */
export async function wholeSealKeysIn(sql: SqlStorage): Promise<KeptSealKey[]> {
  const keys = sealKeysIn(sql);
  for (const { kid, publicJwk } of keys)
    if ((await thumbprintOf(publicJwk)) !== kid)
      throw new DamagedRow({
        what: `seal key ${kid}`,
        remedy: 'Send a copy of keys.json to POST /v1/seal-keys/retired, or import an export: slipmark import',
      });
  return keys;
}

async function thumbprintOf(publicJwk: string): Promise<string | undefined> {
  try {
    return (await publicSealKey(JSON.parse(publicJwk))).kid;
  } catch {
    return undefined;
  }
}

export function replaceSealKey(
  sql: SqlStorage,
  { kid, publicJwk, wrapped, createdAt }: Omit<KeptSealKey, 'retiredAt'>,
) {
  sql.exec('UPDATE sealKeys SET retiredAt = ? WHERE retiredAt IS NULL', createdAt);
  sql.exec('INSERT INTO sealKeys VALUES (?, ?, ?, ?, NULL)', kid, publicJwk, wrapped, createdAt);
}

/**
 * Imports public keys of an earlier deployment, as retired ones: they verify what they sealed, and seal nothing. A
 * workshop that has sealed with its own key has its own history, and imports none.
 */
export function takeOverSealKeys(sql: SqlStorage, keys: readonly RetiredSealKey[], at: string): TakeOverOutcome {
  // Importing the same key again restores a damaged row: the name follows from the key, so it is the same key.
  for (const { kid, publicJwk } of keys) {
    sql.exec('UPDATE sealKeys SET publicJwk = ? WHERE kid = ?', publicJwk, kid);
    const { x } = JSON.parse(publicJwk) as { x: string };
    sql.exec(`UPDATE OR IGNORE sealKeys SET kid = ? WHERE instr(publicJwk, '"x":"' || ? || '"') > 0`, kid, x);
  }
  const known = sealKeysIn(sql);
  const unknown = keys.filter(({ kid }) => !known.some((key) => key.kid === kid));
  if (unknown.length > 0 && known.some(({ retiredAt }) => retiredAt === null)) return { kind: 'seals-already' };
  for (const { kid, publicJwk } of unknown)
    sql.exec('INSERT INTO sealKeys VALUES (?, ?, ?, ?, ?)', kid, publicJwk, '', at, at);
  return { kind: 'taken', added: unknown.length };
}
