import { PDFContext, PDFDict, PDFName, PDFNumber, PDFRawStream, PDFRef } from '#pdf-lib';
import { deflate } from './deflate.ts';
import { RawObject } from './raw-object.ts';
import { type StreamPlace, serialiseFile } from './serialise-file.ts';

/** Further entries of a stream's dictionary: each value a complete PDF object. */
export type StreamEntries = Readonly<Record<string, string>>;

/** Objects of one file: pdf-lib numbers them, `serialise-file.ts` writes them. A reference is text, such as `12 0 R`. */
export interface ObjectStore {
  reserve: () => string;
  put: (reference: string, object: string) => void;
  add: (object: string) => string;
  /** Adds a stream that is deflated here. */
  addStream: (content: string | Uint8Array, entries?: StreamEntries) => string;
  /** Adds a stream with unchanged bytes: with `filter` they are already encoded, without they stay readable. */
  addPlainStream: (bytes: Uint8Array, entries?: StreamEntries, filter?: 'FlateDecode') => string;
  /** Adds a plain stream after all other data, so that no later bytes can be mistaken for it. */
  addLastStream: (bytes: Uint8Array, entries?: StreamEntries) => string;
  /** Writes a stream at a reserved reference; deflated here unless its entries name a filter. */
  putStream: (reference: string, bytes: Uint8Array, entries: StreamEntries) => void;
  save: (root: string, info: string, identifier: string) => SavedFile;
}

/** A finished file, with the positions of its streams. */
export interface SavedFile {
  bytes: Uint8Array;
  placeOf: (reference: string) => StreamPlace | undefined;
}

// Text of content streams has one byte per character.
function bytesOf(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
}

/** Creates an empty store. */
export function createObjectStore(): ObjectStore {
  const context = PDFContext.create();
  const last = new Set<number>();
  const refOf = (reference: string): PDFRef => PDFRef.of(Number.parseInt(reference, 10));
  const reserve = (): string => context.nextRef().toString();
  const put = (reference: string, object: string): void => context.assign(refOf(reference), new RawObject(object));
  const setEntries = (stream: PDFRawStream, entries: StreamEntries): void => {
    for (const [key, value] of Object.entries(entries)) stream.dict.set(PDFName.of(key), new RawObject(value));
  };
  const plainStream = (bytes: Uint8Array): PDFRawStream => {
    const dict = PDFDict.withContext(context);
    dict.set(PDFName.of('Length'), PDFNumber.of(bytes.length));
    return PDFRawStream.of(dict, bytes);
  };
  const deflatedStream = (content: string | Uint8Array): PDFRawStream => {
    const stream = plainStream(deflate(typeof content === 'string' ? bytesOf(content) : content));
    stream.dict.set(PDFName.of('Filter'), PDFName.of('FlateDecode'));
    return stream;
  };
  const addDictionary = (stream: PDFRawStream, entries: StreamEntries): string => {
    setEntries(stream, entries);
    return context.register(stream).toString();
  };
  return {
    reserve,
    put,
    add: (object) => {
      const reference = reserve();
      put(reference, object);
      return reference;
    },
    addStream: (content, entries = {}) => addDictionary(deflatedStream(content), entries),
    addPlainStream: (bytes, entries = {}, filter) => {
      const stream = plainStream(bytes);
      if (filter) stream.dict.set(PDFName.of('Filter'), PDFName.of(filter));
      return addDictionary(stream, entries);
    },
    addLastStream: (bytes, entries = {}) => {
      const reference = addDictionary(plainStream(bytes), entries);
      last.add(refOf(reference).objectNumber);
      return reference;
    },
    putStream: (reference, bytes, entries) => {
      const stream = 'Filter' in entries ? plainStream(bytes) : deflatedStream(bytes);
      setEntries(stream, entries);
      context.assign(refOf(reference), stream);
    },
    save: (root, info, identifier) => {
      const id = `<${identifier}>`;
      context.trailerInfo = { Root: refOf(root), Info: refOf(info), ID: new RawObject(`[${id} ${id}]`) };
      const { bytes, places } = serialiseFile(context, last);
      return { bytes, placeOf: (reference) => places.get(refOf(reference).objectNumber) };
    },
  };
}
