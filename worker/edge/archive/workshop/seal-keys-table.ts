import { publicSealKey } from '../../../core/seal/key.ts';
import { DamagedRow } from '../damaged-row.ts';
import type { KeptSealKey, RetiredSealKey, TakeOverOutcome } from './workshop-calls.ts';

/** Every key, the present one first. */
export function sealKeysIn(sql: SqlStorage): KeptSealKey[] {
  const statement = 'SELECT * FROM sealKeys ORDER BY retiredAt IS NOT NULL, createdAt DESC, kid';
  return sql.exec(statement).toArray() as unknown as KeptSealKey[];
}

/**
 * Every key, the present one first, each under the name that follows from it (RFC 7638).
 *
 * @throws DamagedRow where a published half is another than the one that seals are by
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
 * Takes the public keys of an earlier deployment over, as retired ones: they prove what they sealed, and seal nothing. Once the workshop
 * seals with a key of its own it has a past of its own, and takes no other.
 */
export function takeOverSealKeys(sql: SqlStorage, keys: readonly RetiredSealKey[], at: string): TakeOverOutcome {
  // The same key again brings a row back that is damaged: the name follows from the key, and the key is the one that was named.
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
