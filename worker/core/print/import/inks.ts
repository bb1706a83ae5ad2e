import { fault } from '../../text/faults.ts';
import { FaultSet } from '../bytes/fault-set.ts';
import { shortName } from '../bytes/short-name.ts';
import {
  isArray,
  isDictionary,
  isName,
  isReference,
  isStream,
  isString,
  nameOf,
  type PdfObject,
} from '../pdf-object.ts';
import { crc32 } from '../picture/crc32.ts';
import { damaged } from '../refusal.ts';
import type { PdfFile } from './pdf-file.ts';

// Functions that mix other functions nest a few levels.
const DEEPEST = 16;

// An object as text, the same for objects that are alike wherever they stand.
function likeness(object: PdfObject, file: PdfFile, depth = 0): string {
  if (depth > DEEPEST) throw damaged(fault('objects-nested-too-deeply'));
  file.budget.spend('objects', 1);
  const found = isReference(object) ? file.resolve(object) : object;
  const within = (part: PdfObject): string => likeness(part, file, depth + 1);
  if (isStream(found)) {
    file.budget.spend('unpackedBytes', found.bytes.length);
    return `${within(found.dictionary)}${crc32(found.bytes)}:${found.bytes.length}`;
  }
  if (isArray(found)) return `[${found.map(within).join(' ')}]`;
  if (isDictionary(found)) {
    const entries = [...found].map(([key, value]) => `${JSON.stringify(key)} ${within(value)}`);
    return `<<${entries.sort().join(' ')}>>`;
  }
  if (isName(found)) return `/${JSON.stringify(found.name)}`;
  return isString(found) ? JSON.stringify(found.text) : String(found);
}

/** Of how many inks of a file it is kept how they are mixed. */
export const MAX_INKS = 6;

/** Inks of a file by name (`Separation`), each with what tells it from another of that name. */
export type Inks = ReadonlyMap<string, string>;

/** Which inks a file names, and how they are mixed (ISO 19005-3, 6.2.4.4, from published validation profiles). */
export class InkList {
  readonly #file: PdfFile;
  readonly #seen = new Set<readonly PdfObject[]>();
  readonly inks = new Map<string, string>();
  readonly obstacles = new FaultSet();

  constructor(file: PdfFile) {
    this.#file = file;
  }

  /** Notes a colour space, if it is that of an ink. */
  note(space: readonly PdfObject[]): void {
    const [kind, name, alternate = null, tint = null] = space;
    if (nameOf(this.#file.resolve(kind)) !== 'Separation' || this.#seen.has(space)) return;
    this.#seen.add(space);
    const ink = nameOf(this.#file.resolve(name));
    const mixture = likeness([alternate, tint], this.#file);
    const known = this.inks.get(ink);
    if (known === undefined) this.inks.set(ink, mixture);
    if (this.inks.size > MAX_INKS) this.obstacles.add(fault('names-more-than-inks', { mostInks: MAX_INKS }));
    if (known !== undefined && known !== mixture)
      this.obstacles.add(fault('mixes-ink-more-than-one-way', { ink: shortName(ink) }));
  }
}
