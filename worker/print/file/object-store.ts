import { bytesOfText } from '../bytes/byte-text.ts';
import { deflate } from './deflate.ts';
import { type Entries, type StoredObject, type Stream, type StreamPlace, serialiseFile } from './serialise-file.ts';

/** The objects of one file: numbers, deflates and saves them. A reference is text, such as `12 0 R`. */
export interface ObjectStore {
  reserve: () => string;
  put: (reference: string, object: string) => void;
  add: (object: string) => string;
  /** A stream that is deflated here. */
  addStream: (content: string | Uint8Array, entries?: Entries) => string;
  /** A stream whose bytes stand as they are: with `filter` they are already encoded, without they stay readable. */
  addPlainStream: (bytes: Uint8Array, entries?: Entries, filter?: 'FlateDecode') => string;
  /** A plain stream that stands behind everything else, so that nothing after it can be taken for it. */
  addLastStream: (bytes: Uint8Array, entries?: Entries) => string;
  /** A stream in a reserved place; deflated here unless its entries name a filter. */
  putStream: (reference: string, bytes: Uint8Array, entries: Entries) => void;
  save: (root: string, info: string, identifier: string) => SavedFile;
}

/** A finished file, and where each of its streams stands in it. */
export interface SavedFile {
  bytes: Uint8Array;
  placeOf: (reference: string) => StreamPlace | undefined;
}

const numberOf = (reference: string): number => Number.parseInt(reference, 10);

function deflatedStream(content: string | Uint8Array, entries: Entries): Stream {
  // Text of content streams holds a byte a character.
  const contents = deflate(typeof content === 'string' ? bytesOfText(content) : content);
  return { entries: { Filter: '/FlateDecode', ...entries }, contents };
}

/** An empty store. */
export function createObjectStore(): ObjectStore {
  const objects = new Map<number, StoredObject>();
  const last = new Set<number>();
  let newest = 0;
  const reserve = (): string => `${++newest} 0 R`;
  const put = (reference: string, object: StoredObject): void => {
    objects.set(numberOf(reference), object);
  };
  const add = (object: StoredObject): string => {
    const reference = reserve();
    put(reference, object);
    return reference;
  };
  return {
    reserve,
    put,
    add,
    addStream: (content, entries = {}) => add(deflatedStream(content, entries)),
    addPlainStream: (contents, entries = {}, filter) =>
      add({ entries: filter ? { Filter: `/${filter}`, ...entries } : entries, contents }),
    addLastStream: (contents, entries = {}) => {
      const reference = add({ entries, contents });
      last.add(numberOf(reference));
      return reference;
    },
    putStream: (reference, bytes, entries) =>
      put(reference, 'Filter' in entries ? { entries, contents: bytes } : deflatedStream(bytes, entries)),
    save: (root, info, identifier) => {
      const trailer = { Root: root, Info: info, ID: `[<${identifier}> <${identifier}>]` };
      const { bytes, places } = serialiseFile(objects, trailer, last);
      return { bytes, placeOf: (reference) => places.get(numberOf(reference)) };
    },
  };
}
