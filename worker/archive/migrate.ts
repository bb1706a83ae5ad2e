/** A step of a schema: SQL without parameters. Steps are only ever added. */
export type Migration = string;

/**
 * Brings the tables of a Durable Object up to date. The number of steps taken is kept beside the tables, because the storage
 * of an object does not offer `PRAGMA user_version`.
 */
export function migrate(storage: DurableObjectStorage, migrations: readonly Migration[]): void {
  storage.transactionSync(() => {
    storage.sql.exec('CREATE TABLE IF NOT EXISTS schemaVersion (version INTEGER NOT NULL)');
    const taken = storage.sql.exec<{ version: number }>('SELECT version FROM schemaVersion').toArray()[0]?.version;
    if (taken === undefined) storage.sql.exec('INSERT INTO schemaVersion VALUES (0)');
    for (const step of migrations.slice(taken ?? 0)) storage.sql.exec(step);
    storage.sql.exec('UPDATE schemaVersion SET version = ?', migrations.length);
  });
}
