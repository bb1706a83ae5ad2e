import { existsSync, readdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';

/** What SQLite says of a file that is damaged, or is no database (SQLITE_CORRUPT, SQLITE_NOTADB). */
const DAMAGED_CODES = [11, 26];

/** The runtime's own notes of when to wake which object. Objects wake themselves again when they are next asked. */
const ALARMS = 'metadata.sqlite';

/**
 * Sets aside the databases that can be made anew, where they are damaged: the list of packs follows from the ledgers, and the runtime
 * does not start over damaged alarms. Ledgers are never touched.
 *
 * @param tell told what was set aside, and what to do
 */
export function setAsideDamaged(storage: string, tell: (line: string) => void): void {
  for (const kind of ['objects', 'blobs', 'index'])
    for (const folder of foldersIn(join(storage, kind)))
      if (isDamaged(join(folder, ALARMS))) setAside(join(folder, ALARMS));
  const index = join(storage, 'index');
  const lists = foldersIn(index).flatMap((folder) => readdirSync(folder).map((file) => join(folder, file)));
  if (!lists.some((file) => file.endsWith('.sqlite') && isDamaged(file))) return;
  const aside = `${index}-damaged-${Date.now()}`;
  renameSync(index, aside);
  tell(`The list of packs was damaged and is set aside: ${aside}. Fill the new one with npx slipmark reindex`);
}

function foldersIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  const entries = readdirSync(folder, { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory()).map(({ name }) => join(folder, name));
}

/** Whether a database is damaged, or is none any more. */
export function isDamaged(file: string): boolean {
  if (!existsSync(file)) return false;
  try {
    const database = new DatabaseSync(file, { readOnly: true });
    try {
      return database.prepare('PRAGMA quick_check(1)').get()?.quick_check !== 'ok';
    } finally {
      database.close();
    }
  } catch (error) {
    // What cannot be opened for another reason is not known to be damaged.
    return DAMAGED_CODES.includes((error as { errcode?: number }).errcode ?? 0);
  }
}

/** A database with what SQLite keeps beside it. */
function setAside(file: string): void {
  const moment = Date.now();
  for (const beside of ['', '-wal', '-shm'])
    if (existsSync(file + beside)) renameSync(file + beside, `${file}-damaged-${moment}${beside}`);
}
