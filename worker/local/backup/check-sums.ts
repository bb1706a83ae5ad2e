import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { altered, type FolderDefect } from './defect.ts';
import { bytesAt, digestOf, filesUnder, readSums, textAt } from './folder.ts';
import { PLACES } from './format.ts';

/** Checks every file of a folder against the list of digests, and the list against the files. */
export function checkSums(folder: string): FolderDefect[] {
  if (!existsSync(join(folder, PLACES.sums)))
    return [altered(PLACES.sums, 'is missing: the export was never finished, or the list was taken away')];
  const sums = readSums(textAt(folder, PLACES.sums));
  if (!sums) return [altered(PLACES.sums, 'is not a list of digests')];
  const files = filesUnder(folder).filter((path) => path !== PLACES.sums);
  const present = new Set(files);
  const missing = [...sums.keys()].filter((path) => !present.has(path)).map((path) => altered(path, 'is missing'));
  const strange = files.flatMap((path) => {
    const digest = sums.get(path);
    if (digest === undefined) return [altered(path, `is not in ${PLACES.sums}`)];
    return digestOf(bytesAt(folder, path)) === digest
      ? []
      : [altered(path, `differs from its digest in ${PLACES.sums}`)];
  });
  return [...missing, ...strange];
}
