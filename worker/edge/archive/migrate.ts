/** Step of a schema: SQL without parameters. Steps are only ever added. */
export type Migration = string;

/** Whether an object has ever stored anything: reads leave nothing behind. */
export function hasTables(storage: DurableObjectStorage): boolean {
  return storage.sql.exec(`SELECT 1 FROM sqlite_master WHERE name = 'schemaVersion'`).toArray().length > 0;
}

/**
 * Brings the tables of a Durable Object up to date. The number of steps taken is kept with the tables, because the
 * storage of an object does not offer `PRAGMA user_version`. It never goes down: code that is older than the tables
 * leaves them unchanged, and newer code does not repeat its steps. Writes nothing if nothing changes, so that a full
 * disk can be read.
 *
 * It is kept twice, because the code of the first edition sets `schemaVersion` to the number of steps that it knows
 * itself.
 */
export function migrate(storage: DurableObjectStorage, migrations: readonly Migration[]): void {
  const taken = hasTables(storage) ? stepsTaken(storage) : undefined;
  if (taken !== undefined && taken >= migrations.length) return;
  storage.transactionSync(() => {
    for (const table of COUNTS) {
      storage.sql.exec(`CREATE TABLE IF NOT EXISTS ${table} (version INTEGER NOT NULL)`);
      storage.sql.exec(`INSERT INTO ${table} SELECT 0 WHERE NOT EXISTS (SELECT 1 FROM ${table})`);
    }
    for (const step of migrations.slice(taken ?? 0)) storage.sql.exec(step);
    for (const table of COUNTS) storage.sql.exec(`UPDATE ${table} SET version = max(version, ?)`, migrations.length);
  });
}

const COUNTS = ['schemaVersion', 'stepsTaken'] as const;

function stepsTaken(storage: DurableObjectStorage): number {
  const names = `SELECT name FROM sqlite_master WHERE name IN ('${COUNTS.join("', '")}')`;
  const counts = storage.sql.exec<{ name: string }>(names).toArray();
  const versions = counts.flatMap(({ name }) =>
    storage.sql.exec<{ version: number }>(`SELECT version FROM ${name}`).toArray(),
  );
  return Math.max(0, ...versions.map(({ version }) => version));
}
