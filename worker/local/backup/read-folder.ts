import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type * as z from 'zod';
import { altered, type FolderDefect } from './defect.ts';
import { textAt } from './folder.ts';
import { AircraftFile, LedgerFile, PeopleFile, PLACES, WorkshopFile } from './format.ts';

/** Content that was read, or the reason why it could not be. */
export type Read<T> = { ok: true; value: T } | { ok: false; defect: FolderDefect };

export const readWorkshop = (folder: string): Read<WorkshopFile> => readAs(folder, PLACES.workshop, WorkshopFile);

export const readAircraftFile = (folder: string, registration: string): Read<AircraftFile> =>
  readAs(folder, `${PLACES.aircraft(registration)}/aircraft.json`, AircraftFile);

export const readLedger = (folder: string, registration: string): Read<LedgerFile> =>
  readAs(folder, `${PLACES.aircraft(registration)}/ledger.json`, LedgerFile);

/**
 * Reads the table of people.
 *
 * @returns undefined if the workshop had no table of people
 */
export const readPeople = (folder: string): Read<PeopleFile> | undefined =>
  existsSync(join(folder, PLACES.people)) ? readAs(folder, PLACES.people, PeopleFile) : undefined;

function readAs<Schema extends z.ZodType>(folder: string, path: string, schema: Schema): Read<z.infer<Schema>> {
  try {
    const parsed = schema.safeParse(JSON.parse(textAt(folder, path)));
    if (parsed.success) return { ok: true, value: parsed.data };
    const [issue] = parsed.error.issues;
    const what = `is not of its form: ${issue?.message} at /${issue?.path.join('/')}`;
    return { ok: false, defect: altered(path, what) };
  } catch {
    return { ok: false, defect: altered(path, 'cannot be read as JSON') };
  }
}
