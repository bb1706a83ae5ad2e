import { fault } from '../../text/faults.ts';
import type { Budget } from '../bytes/budget.ts';
import { textOfBytes } from '../bytes/byte-text.ts';
import {
  dictionaryOf,
  isDictionary,
  isReference,
  isStream,
  type PdfDictionary,
  type PdfObject,
  type PdfStream,
} from '../pdf-object.ts';
import { damaged } from '../refusal.ts';
import { type CrossReference, readCrossReference } from './cross-reference.ts';
import { decodeStream, filtersOf, type Resolve } from './decode-stream.ts';
import { isWhite, tokenAt } from './lexer.ts';
import { createParser, type Parser } from './parse-object.ts';
import { tokenText } from './token-value.ts';

// Why our own reader: pdf-lib unpacks object streams without a bound and searches broken files in quadratic time, so
// a hostile file of a few kB could stop the Worker. This one reads what the cross-reference names, under one budget,
// and refuses a broken file instead of repairing it.

/** A PDF whose objects are read when they are asked for. */
export interface PdfFile {
  trailer: PdfDictionary;
  /** The numbers of all objects. */
  numbers: readonly number[];
  /** What an object or reference stands for; null for what was deleted or never was. */
  resolve: Resolve;
  /** The bytes of a stream, unpacked; once, however often they are asked for. */
  decode: (stream: PdfStream) => Uint8Array;
  /** What reading it is charged to. */
  budget: Budget;
}

const HEADER_WITHIN = 1024;
const LONGEST_HEADER_BYTES = 64;
const LONGEST_REFERENCE_CHAIN = 8;

// To read an object others may have to be read: the stream it is packed in, and the length of that. Real files need three.
const MAX_OPENING = 16;

/** Where a PDF begins in the bytes: a few bytes may stand before it; -1 for what is none. */
export function pdfStart(bytes: Uint8Array): number {
  return textOfBytes(bytes.subarray(0, HEADER_WITHIN)).indexOf('%PDF-');
}

interface Indirect {
  number: number;
  object: PdfObject;
}

/** Is told of the bytes of each stream, and of those gone through behind it. */
type Passed = (bytes: number) => void;

// Streams of a sound file do not overlap; that of a table of objects may be read once more as an object.
const MAX_PASSES = 2;

function passedOnly(most: number): Passed {
  let total = 0;
  return (count) => {
    total += count;
    if (total > most) throw damaged(fault('parts-lie-over-one-another'));
  };
}

function streamAfter(
  bytes: Uint8Array,
  dictionary: PdfDictionary,
  keywordEnd: number,
  resolve: Resolve,
  passed: Passed,
): PdfStream {
  const start = keywordEnd + (bytes[keywordEnd] === 13 && bytes[keywordEnd + 1] === 10 ? 2 : 1);
  const length = resolve(dictionary.get('Length'));
  if (typeof length !== 'number' || !(length >= 0) || start + length > bytes.length)
    throw damaged(fault('stream-ends-early'));
  let after = start + length;
  while (after < bytes.length && isWhite(bytes[after])) after++;
  passed(after - start);
  if (textOfBytes(bytes.subarray(after, after + 9)) !== 'endstream') throw damaged(fault('stream-not-long-says'));
  return { kind: 'stream', dictionary, bytes: bytes.subarray(start, start + length) };
}

function indirectAt(bytes: Uint8Array, offset: number, parse: Parser, resolve: Resolve, passed: Passed): Indirect {
  const [number, generation] = [tokenAt(bytes, offset), tokenAt(bytes, tokenAt(bytes, offset).end)];
  const keyword = tokenAt(bytes, generation.end);
  if (number.kind !== 'number' || tokenText(bytes, keyword) !== 'obj' || keyword.end - offset > LONGEST_HEADER_BYTES)
    throw damaged(fault('object-not-where-should'));
  const { object, next } = parse(bytes, keyword.end);
  const isBefore = isDictionary(object) && next.kind === 'word' && tokenText(bytes, next) === 'stream';
  return {
    number: Number(tokenText(bytes, number)),
    object: isBefore ? streamAfter(bytes, object, next.end, resolve, passed) : object,
  };
}

// The objects of an object stream by number (ISO 32000-1, 7.5.7).
function packedObjects(
  decoded: Uint8Array,
  dictionary: PdfDictionary,
  parse: Parser,
  resolve: Resolve,
): Map<number, () => PdfObject> {
  const [count, first] = [resolve(dictionary.get('N')), resolve(dictionary.get('First'))];
  if (typeof count !== 'number' || typeof first !== 'number') throw damaged(fault('packed-objects-not-understood'));
  const found = new Map<number, () => PdfObject>();
  for (let i = 0, at = 0; i < count; i++) {
    const number = parse(decoded, at);
    const offset = parse(decoded, number.end);
    at = offset.end;
    if (typeof number.object !== 'number' || typeof offset.object !== 'number' || at > first)
      throw damaged(fault('packed-objects-not-understood'));
    const start = first + offset.object;
    found.set(number.object, () => parse(decoded, start).object);
  }
  return found;
}

/** Opens a PDF by its cross-reference. Refuses what is damaged or encrypted. */
export function openPdf(given: Uint8Array, budget: Budget): PdfFile {
  const bytes = given.subarray(Math.max(0, pdfStart(given)));
  const parse = createParser(budget);
  const known = new Map<number, PdfObject>();
  const packed = new Map<number, Map<number, () => PdfObject>>();
  const opening = new Set<number>();
  const decodedOf = new Map<Uint8Array, Uint8Array>();
  let reference: CrossReference = { entries: new Map(), trailer: new Map() };

  const passed = passedOnly(MAX_PASSES * bytes.length);
  const decode = ({ dictionary, bytes: encoded }: PdfStream): Uint8Array => {
    const decoded = decodedOf.get(encoded) ?? decodeStream(encoded, filtersOf(dictionary, resolve), resolve, budget);
    decodedOf.set(encoded, decoded);
    return decoded;
  };
  const packedIn = (stream: number): Map<number, () => PdfObject> => {
    const object = objectOf(stream);
    if (!isStream(object)) throw damaged(fault('packed-objects-missing'));
    const objects = packed.get(stream) ?? packedObjects(decode(object), object.dictionary, parse, resolve);
    packed.set(stream, objects);
    return objects;
  };
  const read = (number: number): PdfObject => {
    const entry = reference.entries.get(number);
    if (!entry || entry.kind === 'deleted') return null;
    if (entry.kind === 'in') return packedIn(entry.stream).get(number)?.() ?? null;
    const found = indirectAt(bytes, entry.offset, parse, resolve, passed);
    if (found.number !== number) throw damaged(fault('object-not-where-should'));
    return found.object;
  };
  const objectOf = (number: number): PdfObject => {
    const object = known.get(number);
    if (object !== undefined) return object;
    if (opening.has(number)) throw damaged(fault('object-needed-read-itself'));
    if (opening.size === MAX_OPENING) throw damaged(fault('objects-nested-too-deeply'));
    opening.add(number);
    const found = read(number);
    opening.delete(number);
    known.set(number, found);
    return found;
  };
  const resolve: Resolve = (object = null) => {
    let found = object;
    for (let hops = 0; isReference(found); hops++) {
      if (hops > LONGEST_REFERENCE_CHAIN) throw damaged(fault('references-lead-circle'));
      found = objectOf(found.number);
    }
    return found;
  };

  reference = readCrossReference(bytes, parse, budget, (offset) => {
    const { object } = indirectAt(bytes, offset, parse, resolve, passed);
    if (!isStream(object)) throw damaged(fault('table-objects-not-where-should'));
    return { dictionary: dictionaryOf(object), decoded: decode(object) };
  });
  return { trailer: reference.trailer, numbers: [...reference.entries.keys()], resolve, decode, budget };
}
