import type { JSONWebKeySet } from 'jose';
import { checkFolder } from './check-folder.ts';
import { type Client, refusal } from './client.ts';
import { textAt } from './folder.ts';
import { PLACES } from './format.ts';
import { type ImportedAircraft, importAircraft } from './import-aircraft.ts';
import { type Read, readAircraftFile, readLedger, readWorkshop } from './read-folder.ts';

/**
 * Brings an exported folder into a workshop of another deployment, aircraft by aircraft. Nothing is brought of a folder that has a
 * defect.
 *
 * @throws Error naming what stands against it
 */
export async function importFolder(client: Client, folder: string): Promise<ImportedAircraft[]> {
  const { workshop, aircraft } = value(readWorkshop(folder));
  const keys = JSON.parse(textAt(folder, PLACES.keys)) as JSONWebKeySet;
  const { defects } = await checkFolder(folder, keys);
  if (defects.length > 0) {
    const lines = defects.slice(0, 20).map(({ path, what }) => `\n  ${path} ${what}`);
    throw new Error(`Cannot import: the folder has ${defects.length} defects${lines.join('')}`);
  }
  const there = await client.json<{ workshop: string }>('/v1/aircraft?limit=1');
  if (there?.workshop !== workshop)
    throw new Error(
      `Cannot import: the packs are sealed by the workshop ${workshop}, the key is of ${there?.workshop}. Create a workshop ${workshop} there: only under that name are its packs proved`,
    );
  const taken = await client.send('/v1/seal-keys/retired', { method: 'POST', body: keys });
  if (!taken.ok) throw await refusal('POST /v1/seal-keys/retired', taken);
  const imported: ImportedAircraft[] = [];
  for (const registration of aircraft) {
    const file = value(readAircraftFile(folder, registration));
    imported.push(await importAircraft(client, folder, file, value(readLedger(folder, registration))));
  }
  return imported;
}

function value<T>(read: Read<T>): T {
  if (read.ok) return read.value;
  throw new Error(`Cannot import: ${read.defect.path} ${read.defect.what}`);
}
