import { runInDurableObject } from 'cloudflare:test';
import { env } from 'cloudflare:workers';
import { describe, expect, test } from 'vitest';
import { brokenEntry, entriesAfter } from '../../../worker/edge/archive/ledger/chain.ts';
import { LEDGER_MIGRATIONS } from '../../../worker/edge/archive/ledger/ledger-migrations.ts';
import { backOffMs, drain, isEmpty } from '../../../worker/edge/archive/ledger/outbox.ts';
import { earlierRequest } from '../../../worker/edge/archive/ledger/requests-table.ts';
import { migrate } from '../../../worker/edge/archive/migrate.ts';
import { keep, RECORD, release, testService } from '../service.ts';

async function ledgerWithHistory() {
  const service = await testService();
  await keep(service);
  await release(service);
  await keep(service, { ...RECORD, note: 'corrected' });
  await release(service);
  return env.LEDGER.get(env.LEDGER.idFromName(`${service.workshop}/Q-TST`));
}

const everything = (sql: SqlStorage) => entriesAfter(sql, { limit: 100 }).items;

/** An index that answers no request. */
const indexDown = {
  prepare: () => ({ bind: () => ({}) }),
  batch: () => Promise.reject(new Error('index unreachable')),
} as unknown as D1Database;

describe('chain', () => {
  test('holds over everything that happened', async () => {
    const ledger = await ledgerWithHistory();
    await runInDurableObject(ledger, async (_instance, { storage }) => {
      const entries = everything(storage.sql);
      expect(entries.map(({ kind }) => kind)).toEqual(['visit-kept', 'pack-sealed', 'visit-kept', 'pack-sealed']);
      expect(await brokenEntry(entries)).toBeUndefined();
    });
  });

  test.each([
    ['a changed body', `UPDATE chain SET body = replace(body, 'v1', 'v2') WHERE seq = 2`, 2],
    ['a changed time', `UPDATE chain SET at = '2020-01-01T00:00:00Z' WHERE seq = 3`, 3],
    ['a removed entry', 'DELETE FROM chain WHERE seq = 2', 3],
  ])('shows %s', async (_name, tampering, seq) => {
    const ledger = await ledgerWithHistory();
    await runInDurableObject(ledger, async (_instance, { storage }) => {
      storage.sql.exec(tampering);
      expect((await brokenEntry(everything(storage.sql)))?.seq).toBe(seq);
    });
  });
});

describe('outbox', () => {
  test('keeps what the index did not take, waits longer each time, and is emptied once it answers', async () => {
    const ledger = await ledgerWithHistory();
    await runInDurableObject(ledger, async (_instance, { storage }) => {
      const { sql } = storage;
      sql.exec(`INSERT OR REPLACE INTO outbox (pack, workshop) VALUES ('Q-TST-P1-2', 'outbox-test')`);
      const waits = [await drain(sql, indexDown), await drain(sql, indexDown), await drain(sql, indexDown)];
      expect(waits).toEqual([1_000, 2_000, 4_000]);
      expect(isEmpty(sql)).toBe(false);
      expect(await drain(sql, env.INDEX)).toBeNull();
      expect(isEmpty(sql)).toBe(true);
      const row = await env.INDEX.prepare(`SELECT pack FROM packs WHERE workshop = 'outbox-test'`).first();
      expect(row).toEqual({ pack: 'Q-TST-P1-2' });
    });
  });

  test('backOffMs() grows to an hour and stays there', () => {
    expect([0, 1, 5, 11, 12, 40].map(backOffMs)).toEqual([1_000, 2_000, 32_000, 2_048_000, 3_600_000, 3_600_000]);
  });
});

/** What two builds of one day know: the newer one a step more, which cannot be taken twice. */
const OLDER = LEDGER_MIGRATIONS;
const NEWER = [...LEDGER_MIGRATIONS, 'CREATE TABLE later (x)', 'INSERT INTO later VALUES (1)'];

describe('migrate()', () => {
  test.each([
    ['the newer build twice', [OLDER, NEWER, NEWER]],
    ['back to the older build, and forth again', [NEWER, OLDER, NEWER]],
    ['back and forth, over and over', [OLDER, NEWER, OLDER, OLDER, NEWER, OLDER, NEWER]],
  ])('takes each step once: %s', async (name, builds) => {
    const ledger = env.LEDGER.get(env.LEDGER.idFromName(`migrations, ${name}`));
    await runInDurableObject(ledger, async (_instance, { storage }) => {
      for (const build of builds) migrate(storage, build);
      expect(storage.sql.exec('SELECT x FROM later').toArray()).toEqual([{ x: 1 }]);
      expect(storage.sql.exec('SELECT version FROM schemaVersion').toArray()).toEqual([{ version: NEWER.length }]);
    });
  });

  test('takes no step twice after the first edition counted them back', async () => {
    const ledger = env.LEDGER.get(env.LEDGER.idFromName('migrations, first edition'));
    await runInDurableObject(ledger, async (_instance, { storage }) => {
      const { sql } = storage;
      migrate(storage, NEWER);
      // What the first edition does when it opens a ledger (its own code, shortened).
      sql.exec('UPDATE schemaVersion SET version = ?', 2);
      migrate(storage, NEWER);
      expect(sql.exec('SELECT x FROM later').toArray()).toEqual([{ x: 1 }]);
    });
  });

  test('goes on from the tables of the first edition', async () => {
    const ledger = env.LEDGER.get(env.LEDGER.idFromName('migrations, from the first edition'));
    await runInDurableObject(ledger, async (_instance, { storage }) => {
      const { sql } = storage;
      sql.exec('CREATE TABLE schemaVersion (version INTEGER NOT NULL)');
      sql.exec('INSERT INTO schemaVersion VALUES (2)');
      for (const step of LEDGER_MIGRATIONS.slice(0, 2)) sql.exec(step);
      migrate(storage, NEWER);
      expect(sql.exec('SELECT isShared FROM packs').toArray()).toEqual([]);
      expect(sql.exec('SELECT version FROM stepsTaken').toArray()).toEqual([{ version: NEWER.length }]);
    });
  });

  test('takes over the requests of earlier code, which goes on writing beside', async () => {
    const ledger = env.LEDGER.get(env.LEDGER.idFromName('migrations, requests'));
    await runInDurableObject(ledger, async (_instance, { storage }) => {
      const { sql } = storage;
      const before = LEDGER_MIGRATIONS.slice(0, 5);
      const earlier = (key: string, answer: string) =>
        sql.exec('INSERT INTO requests VALUES (?, ?, ?, ?)', key, 'f', answer, '2026-11-30T08:00:00Z');
      migrate(storage, before);
      earlier('made', 'Q-TST-P1-1');
      earlier('stood', 'Q-TST-P1-1 standing');
      migrate(storage, OLDER);
      const keyed = (keySha256: string, fingerprintSha256 = 'f') =>
        earlierRequest(sql, { keySha256, fingerprintSha256 });
      expect(keyed('made')).toEqual({ kind: 'repeated', answer: 'Q-TST-P1-1', wasStanding: false });
      expect(keyed('stood')).toEqual({ kind: 'repeated', answer: 'Q-TST-P1-1', wasStanding: true });
      expect(keyed('stood', 'g')).toEqual({ kind: 'key-reused' });
      migrate(storage, before);
      expect(() => earlier('after a rollback', 'Q-TST-P1-2')).not.toThrow();
      expect(() => migrate(storage, OLDER)).not.toThrow();
    });
  });

  test('writes nothing where every step was taken, so that a full disk is read', async () => {
    const ledger = env.LEDGER.get(env.LEDGER.idFromName('migrations, full'));
    await runInDurableObject(ledger, async (_instance, { storage }) => {
      migrate(storage, NEWER);
      const full = {
        sql: {
          exec(query: string, ...values: unknown[]) {
            if (!query.startsWith('SELECT')) throw new Error('database or disk is full');
            return storage.sql.exec(query, ...values);
          },
        },
        transactionSync: () => {
          throw new Error('database or disk is full');
        },
      } as unknown as DurableObjectStorage;
      expect(() => migrate(full, [...NEWER, 'CREATE TABLE later2 (x)'])).toThrow('disk is full');
      for (const build of [NEWER, OLDER]) expect(() => migrate(full, build)).not.toThrow();
    });
  });
});
