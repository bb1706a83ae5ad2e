import type { JSONWebKeySet } from 'jose';
import { type CheckedAircraft, checkAircraft } from './check-aircraft.ts';
import { checkSums } from './check-sums.ts';
import type { FolderDefect } from './defect.ts';
import { readPeople, readWorkshop } from './read-folder.ts';

export interface CheckedFolder {
  /** Undefined where the folder does not say whose it is. */
  workshop: string | undefined;
  aircraft: CheckedAircraft[];
  /** So many people the folder has in its table. No seal proves them. */
  people: number;
  /** All of them, each said once. */
  defects: FolderDefect[];
}

/**
 * Holds an exported folder against its list of digests, its ledgers and its seals. Asks nobody.
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
