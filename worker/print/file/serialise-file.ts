import { bytesOfText, joined } from '../bytes/byte-text.ts';
import { lastIndexOf } from '../bytes/find-bytes.ts';
import {
  type CrossReferenceTable,
  crossReferenceTable,
  rowAt,
  rowWithin,
  type TableRow,
} from './cross-reference-table.ts';
import { deflate } from './deflate.ts';

// Alike structure elements compress better together, and fewer streams are quicker to write.
const OBJECTS_PER_STREAM = 400;

const STREAM = 'stream\n';

// Four bytes beyond ASCII say that the file is binary (ISO 32000-1, 7.5.2).
const HEADER = '%PDF-1.7\n%\x81\x81\x81\x81\n\n';

/** Entries of a dictionary: each value a complete PDF object in ASCII. */
export type Entries = Readonly<Record<string, string>>;

/** A stream: the entries of its dictionary but for its length, and its contents as they stand in the file. */
export interface Stream {
  entries: Entries;
  contents: Uint8Array;
}

/** An object that is already written out, or a stream. */
export type StoredObject = string | Stream;

/** Where a stream stands in the finished file: the object as a whole, and within it the contents. */
export interface StreamPlace {
  start: number;
  end: number;
  contents: { start: number; end: number };
}

export interface Serialised {
  bytes: Uint8Array;
  /** By object number. */
  places: ReadonlyMap<number, StreamPlace>;
}

/** The bytes of a file as they come, and where each part begins. */
interface Output {
  parts: Uint8Array[];
  bytes: number;
}

function append(output: Output, part: Uint8Array): number {
  const at = output.bytes;
  output.parts.push(part);
  output.bytes += part.length;
  return at;
}

// The contents are not copied: photographs are most of the memory that a pack takes.
function appendContents(output: Output, number: number, dictionary: string, content: Uint8Array): StreamPlace {
  const start = append(output, bytesOfText(`${number} 0 obj\n`));
  append(output, bytesOfText(`${dictionary}\n${STREAM}`));
  const from = append(output, content);
  const to = append(output, bytesOfText('\nendstream\n'));
  const end = append(output, bytesOfText('endobj\n\n'));
  return { start, end, contents: { start: from, end: to } };
}

function dictionaryText(entries: Entries): string {
  const lines = Object.entries(entries).map(([key, value]) => `/${key} ${value}\n`);
  return `<<\n${lines.join('')}>>`;
}

function appendStream(output: Output, number: number, { entries, contents }: Stream): StreamPlace {
  return appendContents(output, number, dictionaryText({ Length: String(contents.length), ...entries }), contents);
}

// An object stream (ISO 32000-1, 7.5.7): numbers and offsets, then the objects.
function appendObjects(output: Output, number: number, objects: readonly (readonly [number, string])[]): number {
  let offset = 0;
  const places: string[] = [];
  for (const [objectNumber, text] of objects) {
    places.push(`${objectNumber} ${offset}`);
    offset += text.length + 1;
  }
  const head = `${places.join(' ')}\n`;
  const content = deflate(bytesOfText(head + objects.map(([, text]) => text).join('\n')));
  const dictionary = `<</Type/ObjStm/N ${objects.length}/First ${head.length}/Filter/FlateDecode/Length ${content.length}>>`;
  return appendContents(output, number, dictionary, content).start;
}

// As many bytes at the beginning of a last stream as tell it from anything else.
const TELLING_BYTES = 16;

// The table is of one pattern from end to end, over which a higher level of deflating takes ten times as long. Deflated it may hold any
// bytes; plain it holds small numbers between its offsets, and so no text.
function appendTable(
  output: Output,
  number: number,
  trailer: Entries,
  table: CrossReferenceTable,
  lastStreams: readonly Stream[],
): number {
  const deflated = deflate(table.contents);
  const written = joined([bytesOfText(STREAM), deflated]);
  const opensLast = lastStreams.some(({ contents }) => {
    const telling = contents.subarray(0, TELLING_BYTES);
    return lastIndexOf(written, joined([bytesOfText(STREAM), telling])) >= 0;
  });
  const content = opensLast ? table.contents : deflated;
  const dictionary = dictionaryText({
    ...trailer,
    Type: '/XRef',
    Size: String(number + 1),
    Length: String(content.length),
    ...table.entries,
    ...(opensLast ? {} : { Filter: '/FlateDecode' }),
  });
  return appendContents(output, number, dictionary, content).start;
}

/**
 * The file of all objects (ISO 32000-1, 7.5): streams, then plain objects in object streams, then the last streams and the table.
 *
 * @param objects by object number
 * @param trailer entries of the trailer
 * @param last numbers of the streams that stand behind everything but the table: how such a stream begins, with the keyword before it, is not to
 * be found after it
 */
export function serialiseFile(
  objects: ReadonlyMap<number, StoredObject>,
  trailer: Entries,
  last: ReadonlySet<number> = new Set(),
): Serialised {
  const output: Output = { parts: [], bytes: 0 };
  append(output, bytesOfText(HEADER));
  const sorted = [...objects].sort(([one], [other]) => one - other);
  const plain: [number: number, text: string][] = [];
  const lastStreams: [number: number, stream: Stream][] = [];
  const places = new Map<number, StreamPlace>();
  const rows = new Map<number, TableRow>();
  const write = (number: number, stream: Stream): void => {
    const place = appendStream(output, number, stream);
    places.set(number, place);
    rows.set(number, rowAt(place.start));
  };
  for (const [number, object] of sorted) {
    if (typeof object === 'string') plain.push([number, object]);
    else if (last.has(number)) lastStreams.push([number, object]);
    else write(number, object);
  }
  let next = (sorted.at(-1)?.[0] ?? 0) + 1;
  for (let at = 0; at < plain.length; at += OBJECTS_PER_STREAM) {
    const chunk = plain.slice(at, at + OBJECTS_PER_STREAM);
    for (const [index, [number]] of chunk.entries()) rows.set(number, rowWithin(next, index));
    rows.set(next, rowAt(appendObjects(output, next, chunk)));
    next++;
  }
  for (const [number, stream] of lastStreams) write(number, stream);
  rows.set(next, rowAt(output.bytes));
  const lasts = lastStreams.map(([, stream]) => stream);
  const tableAt = appendTable(output, next, trailer, crossReferenceTable(rows), lasts);
  append(output, bytesOfText(`startxref\n${tableAt}\n%%EOF`));
  return { bytes: joined(output.parts), places };
}
