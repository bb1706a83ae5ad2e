import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The messages of one language, as its translators write them (ICU MessageFormat). */
export interface Catalogue {
  /** By their ids. */
  messages: Readonly<Record<string, string>>;
  /** By the value that they name: a choice of the record, or a code of a result. */
  terms: Readonly<Record<string, string>>;
  /** By the ids under which they are kept with files. */
  faults: Readonly<Record<string, string>>;
}

/**
 * Reads the catalogue of one language: every file of its folder, of which `terms.json` has the terms and `faults.json` the faults of files.
 *
 * @param folder the folder of all languages
 * @throws Error when two files have the same id
 */
export function readCatalogue(folder: string, language: string): Catalogue {
  const messages: Record<string, string> = {};
  const apart: { terms: Record<string, string>; faults: Record<string, string> } = { terms: {}, faults: {} };
  for (const file of readdirSync(join(folder, language)).sort()) {
    const read = JSON.parse(readFileSync(join(folder, language, file), 'utf8')) as Record<string, string>;
    if (file === 'terms.json') apart.terms = read;
    else if (file === 'faults.json') apart.faults = read;
    else addTo(messages, read, `${language}/${file}`);
  }
  return { messages, ...apart };
}

function addTo(messages: Record<string, string>, more: Readonly<Record<string, string>>, file: string): void {
  const again = Object.keys(more).filter((id) => id in messages);
  if (again.length > 0) throw new Error(`Cannot read ${file}: another file has ${again.join(', ')} too`);
  Object.assign(messages, more);
}
