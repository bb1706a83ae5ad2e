import { DatabaseSync, type SQLInputValue } from 'node:sqlite';

/** The storage of a Durable Object in memory, as far as the archive uses it, over the SQLite of Node. */
export function objectStorage(onAlarm: () => void) {
  const database = new DatabaseSync(':memory:');
  let alarm: number | null = null;
  return {
    sql: {
      exec(query: string, ...values: SQLInputValue[]) {
        if (values.length === 0 && /;\s*\S/.test(query)) database.exec(query);
        const rows = values.length === 0 && /;\s*\S/.test(query) ? [] : database.prepare(query).all(...values);
        return { toArray: () => rows, one: () => rows[0] };
      },
    },
    transactionSync<T>(change: () => T): T {
      database.exec('SAVEPOINT change');
      try {
        const result = change();
        database.exec('RELEASE change');
        return result;
      } catch (error) {
        database.exec('ROLLBACK TO change');
        throw error;
      }
    },
    getAlarm: async () => alarm,
    async setAlarm(at: number) {
      alarm = at;
      setImmediate(() => {
        alarm = null;
        onAlarm();
      });
    },
  };
}

/** A D1 database in memory, as far as the archive uses it. */
export function indexDatabase() {
  const database = new DatabaseSync(':memory:');
  const prepare = (query: string, values: SQLInputValue[] = []) => ({
    bind: (...bound: SQLInputValue[]) => prepare(query, bound),
    all: async () => ({ results: database.prepare(query).all(...values) }),
    run: async () => database.prepare(query).run(...values),
  });
  return {
    prepare: (query: string) => prepare(query),
    async batch(statements: ReturnType<typeof prepare>[]) {
      for (const statement of statements) await statement.run();
    },
  };
}
