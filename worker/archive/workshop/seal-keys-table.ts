import type { KeptSealKey, RetiredSealKey, TakeOverOutcome } from './workshop-calls.ts';

/** Every key, the present one first. */
export function sealKeysIn(sql: SqlStorage): KeptSealKey[] {
  const statement = 'SELECT * FROM sealKeys ORDER BY retiredAt IS NOT NULL, createdAt DESC, kid';
  return sql.exec(statement).toArray() as unknown as KeptSealKey[];
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
  const known = sealKeysIn(sql);
  const unknown = keys.filter(({ kid }) => !known.some((key) => key.kid === kid));
  if (unknown.length > 0 && known.some(({ retiredAt }) => retiredAt === null)) return { kind: 'seals-already' };
  for (const { kid, publicJwk } of unknown)
    sql.exec('INSERT INTO sealKeys VALUES (?, ?, ?, ?, ?)', kid, publicJwk, '', at, at);
  return { kind: 'taken', added: unknown.length };
}
