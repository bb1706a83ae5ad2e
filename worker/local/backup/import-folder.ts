import type { JSONWebKeySet } from 'jose';
import { refusalOf, type Slipmark } from '../../client/client.ts';
import { canonicalJson } from '../../core/pack/canonical-json.ts';
import { checkFolder } from './check-folder.ts';
import { DefectsError } from './defect.ts';
import { textAt } from './folder.ts';
import { PLACES } from './format.ts';
import { type ImportedAircraft, importAircraft } from './import-aircraft.ts';
import { type Read, readAircraftFile, readLedger, readPeople, readWorkshop } from './read-folder.ts';

export interface Imported {
  aircraft: ImportedAircraft[];
  /** People not imported from the table, each in a sentence. */
  people: string[];
}

/**
 * Imports an exported folder into a workshop of another deployment, aircraft by aircraft. A folder with a defect is not
 * imported at all.
 *
 * @param onProgress called before each aircraft is imported
 * @throws Error naming the defects
 */
export async function importFolder(
  client: Slipmark,
  folder: string,
  onProgress?: (line: string) => void,
): Promise<Imported> {
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
  const people = await enterPeople(client, folder);
  const imported: ImportedAircraft[] = [];
  for (const [index, registration] of aircraft.entries()) {
    onProgress?.(`Importing ${registration}, ${index + 1} of ${aircraft.length}`);
    const file = value(readAircraftFile(folder, registration));
    imported.push(await importAircraft(client, folder, file, value(readLedger(folder, registration))));
  }
  return { aircraft: imported, people };
}

/**
 * Enters the people of the folder if the table is empty. No seal protects them, so nobody gets a right in a workshop
 * that has a table: differences are only reported.
 */
async function enterPeople(client: Slipmark, folder: string): Promise<string[]> {
  const table = readPeople(folder);
  const people = table ? value(table).people : [];
  if (people.length === 0) return [];
  const listed = client.listPeople();
  if (await refusalOf(listed, 500)) return ['The table of people is damaged there: nobody of the folder was entered'];
  const { items } = (await listed).body;
  const known = new Map(items.map((person) => [person.id, person]));
  const remarks: string[] = [];
  for (const { id, ...body } of people) {
    const there = known.get(id);
    if (known.size === 0) await client.putPerson({ person: id, body });
    else if (!there) remarks.push(`${id} is not in the table of people there, and was not entered`);
    else if (!isSame(body, there)) remarks.push(`${id} stands otherwise in the table of people there, and was left so`);
  }
  return remarks;
}

/** Whether a person is the same in table and folder, apart from time and key of the entry. */
function isSame(body: object, there: object): boolean {
  return Object.entries(body).every(
    ([key, said]) => canonicalJson(said) === canonicalJson((there as Record<string, unknown>)[key] ?? null),
  );
}

type RetiredKeys = Parameters<Slipmark['takeOverSealKeys']>[0]['body'];

function value<T>(read: Read<T>): T {
  if (read.ok) return read.value;
  throw new Error(`Cannot import: ${read.defect.path} ${read.defect.what}`);
}
