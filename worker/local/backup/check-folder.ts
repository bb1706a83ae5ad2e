import type { JSONWebKeySet } from 'jose';
import { type CheckedAircraft, checkAircraft } from './check-aircraft.ts';
import { checkSums } from './check-sums.ts';
import type { FolderDefect } from './defect.ts';
import { readPeople, readWorkshop } from './read-folder.ts';

export interface CheckedFolder {
  /** Undefined if the folder does not name its workshop. */
  workshop: string | undefined;
  aircraft: CheckedAircraft[];
  /** Number of people in the table of the folder. They are not protected by a seal. */
  people: number;
  /** All defects, each once. */
  defects: FolderDefect[];
}

/**
 * Checks an exported folder against its list of digests, its ledgers and its seals, without a service.
 *
 * @param keys of the workshop, from a copy that was kept elsewhere
 */
export async function checkFolder(folder: string, keys: JSONWebKeySet): Promise<CheckedFolder> {
  const bySums = checkSums(folder);
  const read = readWorkshop(folder);
  if (!read.ok) return { workshop: undefined, aircraft: [], people: 0, defects: distinct([...bySums, read.defect]) };
  const { workshop, aircraft: names } = read.value;
  const aircraft: CheckedAircraft[] = [];
  for (const registration of names) aircraft.push(await checkAircraft(folder, { workshop, registration, keys }));
  const people = readPeople(folder);
  const inPeople = people && !people.ok ? [people.defect] : [];
  const defects = [...bySums, ...inPeople, ...aircraft.flatMap((checked) => checked.defects)];
  const entered = people?.ok ? people.value.people.length : 0;
  return { workshop, aircraft, people: entered, defects: distinct(defects) };
}

function distinct(defects: readonly FolderDefect[]): FolderDefect[] {
  return [...new Map(defects.map((defect) => [`${defect.path} ${defect.what}`, defect])).values()];
}
