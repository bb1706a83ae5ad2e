import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Miniflare } from 'miniflare';

type Database = Awaited<ReturnType<Miniflare['getD1Database']>>;

/** Takes the steps of the index that it has not taken yet, recorded in the table of `wrangler d1 migrations`. */
export async function migrateIndex(index: Database, folder: string): Promise<void> {
  const table =
    'CREATE TABLE IF NOT EXISTS d1_migrations (id INTEGER PRIMARY KEY AUTOINCREMENT, name TEXT UNIQUE, applied_at TIMESTAMP DEFAULT CURRENT_TIMESTAMP NOT NULL)';
  await index.prepare(table).run();
  const { results } = await index.prepare('SELECT name FROM d1_migrations').all<{ name: string }>();
  const taken = new Set(results.map(({ name }) => name));
  const files = readdirSync(folder).filter((file) => file.endsWith('.sql') && !taken.has(file));
  for (const name of files.sort()) {
    const steps = statementsIn(readFileSync(join(folder, name), 'utf8')).map((sql) => index.prepare(sql));
    await index.batch([...steps, index.prepare('INSERT INTO d1_migrations (name) VALUES (?)').bind(name)]);
  }
}

/**
 * Returns the statements of a file: comments have their own lines, and a statement ends with a line that ends in `;`.
 */
function statementsIn(sql: string): string[] {
  const code = sql.replaceAll(/^\s*--.*$/gm, '');
  return code
    .split(/;\s*$/m)
    .map((statement) => statement.trim())
    .filter((statement) => statement.length > 0);
}
