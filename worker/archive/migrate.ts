/** A step of a schema: SQL without parameters. Steps are only ever added. */
export type Migration = string;

/** Whether an object has ever kept anything: whoever only asks leaves nothing behind. */
export function hasTables(storage: DurableObjectStorage): boolean {
  return storage.sql.exec(`SELECT 1 FROM sqlite_master WHERE name = 'schemaVersion'`).toArray().length > 0;
}

/**
 * Brings the tables of a Durable Object up to date. The number of steps taken is kept beside the tables, because the storage
 * of an object does not offer `PRAGMA user_version`. It never goes down: code that is older than the tables leaves them as they
 * are, and newer code does not take its steps twice. Writes nothing where nothing is to be done, so that a full disk can be read.
 */
export function migrate(storage: DurableObjectStorage, migrations: readonly Migration[]): void {
  const taken = hasTables(storage) ? stepsTaken(storage) : undefined;
  if (taken !== undefined && taken >= migrations.length) return;
  storage.transactionSync(() => {
    if (taken === undefined) storage.sql.exec('CREATE TABLE IF NOT EXISTS schemaVersion (version INTEGER NOT NULL)');
    if (taken === undefined) storage.sql.exec('INSERT INTO schemaVersion VALUES (0)');
    for (const step of migrations.slice(taken ?? 0)) storage.sql.exec(step);
    storage.sql.exec('UPDATE schemaVersion SET version = max(version, ?)', migrations.length);
  });
}

function stepsTaken(storage: DurableObjectStorage): number | undefined {
  return storage.sql.exec<{ version: number }>('SELECT version FROM schemaVersion').toArray()[0]?.version;
}
