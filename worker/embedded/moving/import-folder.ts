import type { JSONWebKeySet } from 'jose';
import type { Slipmark } from '../../client/client.ts';
import { checkFolder } from './check-folder.ts';
import { DefectsError } from './defect.ts';
import { textAt } from './folder.ts';
import { PLACES } from './format.ts';
import { type ImportedAircraft, importAircraft } from './import-aircraft.ts';
import { type Read, readAircraftFile, readLedger, readPeople, readWorkshop } from './read-folder.ts';

/**
 * Brings an exported folder into a workshop of another deployment, aircraft by aircraft. Nothing is brought of a folder that has a
 * defect.
 *
 * @param onProgress told before each aircraft is brought
 * @throws Error naming what stands against it
 */
export async function importFolder(
  client: Slipmark,
  folder: string,
  onProgress?: (line: string) => void,
): Promise<ImportedAircraft[]> {
  const { workshop, aircraft } = value(readWorkshop(folder));
  const keys = JSON.parse(textAt(folder, PLACES.keys)) as JSONWebKeySet & RetiredKeys;
  const { defects } = await checkFolder(folder, keys);
  if (defects.length > 0) throw new DefectsError('Cannot import: the folder has', defects);
  const { body: there } = await client.listAircraft({ limit: 1 });
  if (there.workshop !== workshop)
    throw new Error(
      `Cannot import: the packs are sealed by the workshop ${workshop}, the key is of ${there.workshop}. Create a workshop ${workshop} there: only under that name are its packs proved`,
    );
  await client.takeOverSealKeys({ body: keys });
  await enterPeople(client, folder);
  const imported: ImportedAircraft[] = [];
  for (const [index, registration] of aircraft.entries()) {
    onProgress?.(`Importing ${registration}, ${index + 1} of ${aircraft.length}`);
    const file = value(readAircraftFile(folder, registration));
    imported.push(await importAircraft(client, folder, file, value(readLedger(folder, registration))));
  }
  return imported;
}

/** People whom the table does not have yet. What it says of others is newer than the folder: rights that ended stay ended. */
async function enterPeople(client: Slipmark, folder: string): Promise<void> {
  const table = readPeople(folder);
  const known = new Set((await client.listPeople()).body.items.map(({ id }) => id));
  for (const { id, ...body } of table ? value(table).people : [])
    if (!known.has(id)) await client.putPerson({ person: id, body });
}

type RetiredKeys = Parameters<Slipmark['takeOverSealKeys']>[0]['body'];

function value<T>(read: Read<T>): T {
  if (read.ok) return read.value;
  throw new Error(`Cannot import: ${read.defect.path} ${read.defect.what}`);
}
