import { existsSync, readdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';

/** Error codes of SQLite for a file that is damaged or not a database (SQLITE_CORRUPT, SQLITE_NOTADB). */
const DAMAGED_CODES = [11, 26];

/** Alarms of the runtime. Objects set them again when they are next called. */
const ALARMS = 'metadata.sqlite';

/**
 * Sets aside damaged databases that can be rebuilt: the list of packs follows from the ledgers, and the runtime does
 * not start with damaged alarms. Ledgers are never touched.
 *
 * @param tell receives what was set aside, and what to do
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

/** Whether a database is damaged, or not a database any more. */
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
    // A file that cannot be opened for another reason is not known to be damaged.
    return DAMAGED_CODES.includes((error as { errcode?: number }).errcode ?? 0);
  }
}

/** Sets a database aside, with the files of SQLite next to it. */
function setAside(file: string): void {
  const moment = Date.now();
  for (const beside of ['', '-wal', '-shm'])
    if (existsSync(file + beside)) renameSync(file + beside, `${file}-damaged-${moment}${beside}`);
}
