import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Messages of one language, as its translators write them (ICU MessageFormat). */
export interface Catalogue {
  /** Messages by id. */
  messages: Readonly<Record<string, string>>;
  /** Terms by the value that they name: a choice of the record, or a code of a result. */
  terms: Readonly<Record<string, string>>;
  /** Faults by the ids under which they are kept with files. */
  faults: Readonly<Record<string, string>>;
  /** Titles and help of the fields of the record, by the ids that its schema names. */
  fields: Readonly<Record<string, FieldWords>>;
}

export interface FieldWords {
  title: string;
  /** Instruction: what to measure or copy, and from where. */
  help: string;
}

/**
 * Reads the catalogue of one language: every file of its folder.
 *
 * @param folder the folder of all languages
 * @throws Error when two files have the same id
 */
export function readCatalogue(folder: string, language: string): Catalogue {
  const read = <Text>(file: string): Record<string, Text> =>
    JSON.parse(readFileSync(join(folder, language, file), 'utf8'));
  const messages: Record<string, string> = {};
  for (const file of readdirSync(join(folder, language)).sort())
    if (!APART.includes(file)) addTo(messages, read(file), `${language}/${file}`);
  return { messages, terms: read('terms.json'), faults: read('faults.json'), fields: read('fields.json') };
}

/** Files whose texts are not looked up by an id in code. */
const APART = ['terms.json', 'faults.json', 'fields.json'];

function addTo(messages: Record<string, string>, more: Readonly<Record<string, string>>, file: string): void {
  const again = Object.keys(more).filter((id) => id in messages);
  if (again.length > 0) throw new Error(`Cannot read ${file}: another file has ${again.join(', ')} too`);
  Object.assign(messages, more);
}
