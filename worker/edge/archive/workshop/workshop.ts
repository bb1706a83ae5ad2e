import { DurableObject } from 'cloudflare:workers';
import { LIMITS } from '../../../core/limits.ts';
import { DamagedRow } from '../damaged-row.ts';
import { migrate } from '../migrate.ts';
import type { Page, PageRequest } from '../page.ts';
import * as aircraft from './aircraft-table.ts';
import * as people from './people-table.ts';
import { createRates } from './rates.ts';
import * as sealKeys from './seal-keys-table.ts';
import type {
  AddKey,
  AddKeyOutcome,
  Admission,
  CreateOutcome,
  EnteredPerson,
  EnterPersonOutcome,
  KeptKey,
  KeptSealKey,
  KeyScope,
  KnownAircraft,
  RetiredSealKey,
  TakeOverOutcome,
  WorkshopCalls,
} from './workshop-calls.ts';
import { KEY_SCOPES } from './workshop-calls.ts';
import { WORKSHOP_MIGRATIONS } from './workshop-migrations.ts';

const COLUMNS = 'key, label, scopes, person, createdAt, lastUsedAt, revokedAt';

/** Rounds a timestamp down to the hour: recording every request would add nothing that matters. */
const hourOf = (moment: string): string => `${moment.slice(0, 13)}:00:00Z`;

/** Parses scopes; returns none if they cannot be read. No key is made without any. */
function scopesIn(text: string): KeyScope[] {
  try {
    const scopes: unknown = JSON.parse(text);
    const isWhole = Array.isArray(scopes) && scopes.every((scope) => KEY_SCOPES.includes(scope));
    return isWhole ? scopes : [];
  } catch {
    return [];
  }
}

/**
 * One workshop and its keys, kept as digests. The text of a key names the object, so that no key is ever searched for.
 */
export class Workshop extends DurableObject<unknown> implements WorkshopCalls {
  readonly #sql: SqlStorage;
  readonly #rates = createRates();

  constructor(state: DurableObjectState, env: unknown) {
    super(state, env);
    this.#sql = state.storage.sql;
    state.blockConcurrencyWhile(async () => {
      if (this.#exists()) migrate(state.storage, WORKSHOP_MIGRATIONS);
    });
  }

  async displayName(): Promise<string | null> {
    if (!this.#exists()) return null;
    return this.#sql.exec<{ name: string }>('SELECT name FROM workshop').toArray()[0]?.name ?? null;
  }

  async create(name: string, key: AddKey): Promise<CreateOutcome> {
    if (this.#exists()) return { kind: 'exists' };
    return this.ctx.storage.transactionSync(() => {
      migrate(this.ctx.storage, WORKSHOP_MIGRATIONS);
      this.#sql.exec('INSERT INTO workshop VALUES (?, ?)', name, key.at);
      return { kind: 'created', key: this.#insert(key) };
    });
  }

  async authenticate(keySha256: string, at: string, requestsPerMinute: number): Promise<Admission | null> {
    if (!this.#exists()) return null;
    const key = this.#inUse('keySha256', keySha256);
    const rate = key && this.#rates.take(key.key, Date.parse(at), requestsPerMinute);
    return rate && { key, rate, isUseNoted: key.lastUsedAt === hourOf(at) };
  }

  async noteUse(keySha256: string, at: string): Promise<void> {
    if (this.#exists()) this.#sql.exec('UPDATE keys SET lastUsedAt = ? WHERE keySha256 = ?', hourOf(at), keySha256);
  }

  async addKey(key: AddKey): Promise<AddKeyOutcome> {
    const { n } = this.#sql.exec<{ n: number }>('SELECT count(*) AS n FROM keys').one();
    return n < LIMITS.workshopKeys ? { kind: 'added', key: this.#insert(key) } : { kind: 'full' };
  }

  async keys(): Promise<KeptKey[]> {
    return this.#where('ORDER BY createdAt, key');
  }

  async revokeKey(key: string, at: string): Promise<KeptKey | null> {
    this.#sql.exec('UPDATE keys SET revokedAt = ? WHERE key = ? AND revokedAt IS NULL', at, key);
    return this.#where('WHERE key = ?', key)[0] ?? null;
  }

  async rotateKey(key: string, keySha256: string, at: string): Promise<KeptKey | null> {
    const kept = this.#inUse('key', key);
    if (!kept) return null;
    return this.ctx.storage.transactionSync(() => {
      this.#sql.exec('UPDATE keys SET revokedAt = ? WHERE key = ?', at, key);
      const { label, scopes, person } = kept;
      return this.#insert({ keySha256, label, scopes, person, at });
    });
  }

  async sealKeys(): Promise<KeptSealKey[] | null> {
    return this.#exists() ? sealKeys.wholeSealKeysIn(this.#sql) : null;
  }

  async takeSealKey(key: Omit<KeptSealKey, 'retiredAt'>, inPlaceOf: string | null): Promise<KeptSealKey> {
    return this.ctx.storage.transactionSync(() => {
      const inUse = sealKeys.sealKeysIn(this.#sql).find(({ retiredAt }) => retiredAt === null);
      if (inUse && inUse.kid !== inPlaceOf) return inUse;
      sealKeys.replaceSealKey(this.#sql, key);
      return { ...key, retiredAt: null };
    });
  }

  async takeOverSealKeys(keys: RetiredSealKey[], at: string): Promise<TakeOverOutcome> {
    return this.ctx.storage.transactionSync(() => sealKeys.takeOverSealKeys(this.#sql, keys, at));
  }

  async people(): Promise<EnteredPerson[]> {
    return people.peopleIn(this.#sql);
  }

  async enterPerson(person: EnteredPerson): Promise<EnterPersonOutcome> {
    return this.ctx.storage.transactionSync(() => people.enterPerson(this.#sql, person));
  }

  async noteAircraft(registration: string): Promise<void> {
    aircraft.noteAircraft(this.#sql, registration);
  }

  async noteKept(registration: string): Promise<void> {
    aircraft.noteKept(this.#sql, registration);
  }

  async wasKept(registration: string): Promise<boolean> {
    return aircraft.wasKept(this.#sql, registration);
  }

  async aircraft(page: PageRequest): Promise<Page<KnownAircraft>> {
    return aircraft.aircraftAfter(this.#sql, page);
  }

  /** Whether the workshop was created. Anybody can send any name: for an unknown workshop nothing may be stored. */
  #exists(): boolean {
    return this.#sql.exec(`SELECT 1 FROM sqlite_master WHERE name = 'workshop'`).toArray().length > 0;
  }

  #insert({ keySha256, label, scopes, person, at }: AddKey): KeptKey {
    const key = keySha256.slice(0, 16);
    const statement = 'INSERT INTO keys (key, keySha256, label, scopes, person, createdAt) VALUES (?, ?, ?, ?, ?, ?)';
    this.#sql.exec(statement, key, keySha256, label, JSON.stringify(scopes), person, at);
    return { key, label, scopes, person, createdAt: at, lastUsedAt: null, revokedAt: null };
  }

  /** Returns a valid key; throws if its rights cannot be read. */
  #inUse(column: 'key' | 'keySha256', value: string): KeptKey | null {
    const [kept] = this.#where(`WHERE ${column} = ? AND revokedAt IS NULL`, value);
    if (!kept || kept.scopes.length > 0) return kept ?? null;
    const remedy = `Revoke it and make another: slipmark keys revoke ${kept.key}`;
    throw new DamagedRow({ what: `rights of the key ${kept.key}`, remedy });
  }

  /** Returns keys. Those whose rights cannot be read have none: they can still be listed and revoked. */
  #where(rest: string, ...values: string[]): KeptKey[] {
    const rows = this.#sql.exec(`SELECT ${COLUMNS} FROM keys ${rest}`, ...values).toArray();
    return rows.map((row) => ({ ...(row as unknown as KeptKey), scopes: scopesIn(String(row.scopes)) }));
  }
}
