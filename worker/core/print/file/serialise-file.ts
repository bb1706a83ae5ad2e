import {
  type PDFContext,
  PDFCrossRefStream,
  PDFHeader,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRef,
  PDFStream,
  PDFTrailer,
} from '#pdf-lib';
import { joined } from '../bytes/byte-text.ts';
import { lastIndexOf } from '../bytes/find-bytes.ts';
import { deflate } from './deflate.ts';

// Similar structure elements compress better together, and fewer streams are quicker to write.
const OBJECTS_PER_STREAM = 400;

const ascii = new TextEncoder();

const STREAM = 'stream\n';

type Written = readonly [ref: PDFRef, object: PDFObject];

/** Position of a stream in the finished file: the object as a whole, and the contents within it. */
export interface StreamPlace {
  start: number;
  end: number;
  contents: { start: number; end: number };
}

export interface Serialised {
  bytes: Uint8Array;
  /** Positions by object number. */
  places: ReadonlyMap<number, StreamPlace>;
}

/** Output so far, and the offset of each part. */
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

// The contents are not copied: photographs take most of the memory of a pack.
function appendContents(output: Output, ref: PDFRef, dictionary: string, content: Uint8Array): StreamPlace {
  const start = append(output, ascii.encode(`${ref.objectNumber} ${ref.generationNumber} obj\n`));
  append(output, ascii.encode(`${dictionary}\n${STREAM}`));
  const from = append(output, content);
  const to = append(output, ascii.encode('\nendstream\n'));
  const end = append(output, ascii.encode('endobj\n\n'));
  return { start, end, contents: { start: from, end: to } };
}

function appendStream(output: Output, ref: PDFRef, stream: PDFStream): StreamPlace {
  stream.updateDict();
  return appendContents(output, ref, stream.dict.toString(), stream.getContents());
}

// An object stream (ISO 32000-1, 7.5.7): numbers and offsets, then the objects.
function appendObjects(output: Output, ref: PDFRef, objects: readonly Written[]): number {
  let offset = 0;
  const places: string[] = [];
  const texts: string[] = [];
  for (const [{ objectNumber }, object] of objects) {
    const text = object.toString();
    places.push(`${objectNumber} ${offset}`);
    texts.push(text);
    offset += text.length + 1;
  }
  const head = `${places.join(' ')}\n`;
  const content = deflate(ascii.encode(head + texts.join('\n')));
  const dictionary = `<</Type/ObjStm/N ${objects.length}/First ${head.length}/Filter/FlateDecode/Length ${content.length}>>`;
  return appendContents(output, ref, dictionary, content).start;
}

// Min. number of bytes at the start of a last stream that distinguish it from other data.
const TELLING_BYTES = 16;

// The table is one pattern throughout, which pdf-lib's own deflating takes ten times as long to pack. Deflated it may
// contain any bytes; plain it has small numbers between its offsets, and so no text.
function appendTable(output: Output, ref: PDFRef, table: PDFCrossRefStream, lastStreams: readonly PDFStream[]): number {
  table.updateDict();
  const plain = table.getUnencodedContents();
  const deflated = deflate(plain);
  const written = joined([ascii.encode(STREAM), deflated]);
  const opensLast = lastStreams.some((stream) => {
    const telling = stream.getContents().subarray(0, TELLING_BYTES);
    return lastIndexOf(written, joined([ascii.encode(STREAM), telling])) >= 0;
  });
  const content = opensLast ? plain : deflated;
  if (!opensLast) table.dict.set(PDFName.of('Filter'), PDFName.of('FlateDecode'));
  table.dict.set(PDFName.of('Length'), PDFNumber.of(content.length));
  return appendContents(output, ref, table.dict.toString(), content).start;
}

/**
 * Returns the file of all objects, equal to the output of pdf-lib's own writer, with the plain objects joined in bulk.
 * That writer would measure and copy each of thousands of structure elements separately.
 *
 * @param last numbers of the streams after all data except the table: the start of one of these, with the keyword
 *   before it, must not occur after it
 */
export function serialiseFile(context: PDFContext, last: ReadonlySet<number> = new Set()): Serialised {
  const output: Output = { parts: [], bytes: 0 };
  const header = PDFHeader.forVersion(1, 7);
  const opening = new Uint8Array(header.sizeInBytes() + 2).fill(0x0a);
  header.copyBytesInto(opening, 0);
  append(output, opening);
  const { Root, Info, ID } = context.trailerInfo;
  const table = PDFCrossRefStream.create(context.obj({ Root, Info, ID }), false);
  const first = context.largestObjectNumber + 1;
  const chunks: Written[][] = [];
  const plain: Written[] = [];
  const lastStreams: [ref: PDFRef, stream: PDFStream][] = [];
  const places = new Map<number, StreamPlace>();
  const write = (ref: PDFRef, stream: PDFStream): void => {
    places.set(ref.objectNumber, appendStream(output, ref, stream));
  };
  for (const [ref, object] of context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFStream)) plain.push([ref, object]);
    else if (last.has(ref.objectNumber)) lastStreams.push([ref, object]);
    else write(ref, object);
  }
  for (let at = 0; at < plain.length; at += OBJECTS_PER_STREAM) chunks.push(plain.slice(at, at + OBJECTS_PER_STREAM));
  const chunkStarts = chunks.map((chunk, i) => appendObjects(output, PDFRef.of(first + i), chunk));
  for (const [ref, stream] of lastStreams) write(ref, stream);
  // Entries of the table are in the order of object numbers.
  const entries = [
    ...[...places].map(([number, { start }]) => ({
      number,
      add: () => table.addUncompressedEntry(PDFRef.of(number), start),
    })),
    ...plain.map(([ref], i) => ({
      number: ref.objectNumber,
      add: () =>
        table.addCompressedEntry(ref, PDFRef.of(first + Math.floor(i / OBJECTS_PER_STREAM)), i % OBJECTS_PER_STREAM),
    })),
    ...chunkStarts.map((start, i) => ({
      number: first + i,
      add: () => table.addUncompressedEntry(PDFRef.of(first + i), start),
    })),
  ];
  for (const { add } of entries.sort((one, other) => one.number - other.number)) add();
  const tableRef = PDFRef.of(first + chunks.length);
  table.dict.set(PDFName.of('Size'), PDFNumber.of(tableRef.objectNumber + 1));
  table.addUncompressedEntry(tableRef, output.bytes);
  const lasts = lastStreams.map(([, stream]) => stream);
  const tableAt = appendTable(output, tableRef, table, lasts);
  const trailer = PDFTrailer.forLastCrossRefSectionOffset(tableAt);
  const closing = new Uint8Array(trailer.sizeInBytes());
  trailer.copyBytesInto(closing, 0);
  append(output, closing);
  return { bytes: joined(output.parts), places };
}
