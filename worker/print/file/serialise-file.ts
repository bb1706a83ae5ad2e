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
} from 'pdf-lib';
import { deflate } from './deflate.ts';

// Alike structure elements compress better together, and fewer streams are quicker to write.
const OBJECTS_PER_STREAM = 400;

const ascii = new TextEncoder();

type Written = readonly [ref: PDFRef, object: PDFObject];

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

function appendObject(output: Output, ref: PDFRef, ...body: readonly Uint8Array[]): number {
  const at = append(output, ascii.encode(`${ref.objectNumber} ${ref.generationNumber} obj\n`));
  for (const part of body) append(output, part);
  append(output, ascii.encode('\nendobj\n\n'));
  return at;
}

// The contents are not copied: photographs are most of the memory that a pack takes.
function appendStream(output: Output, ref: PDFRef, stream: PDFStream): number {
  stream.updateDict();
  const opening = ascii.encode(`${stream.dict.toString()}\nstream\n`);
  return appendObject(output, ref, opening, stream.getContents(), ascii.encode('\nendstream'));
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
  return appendObject(output, ref, ascii.encode(`${dictionary}\nstream\n`), content, ascii.encode('\nendstream'));
}

// The table is of one pattern from end to end, over which pdf-lib's own way of deflating takes ten times as long.
function appendTable(output: Output, ref: PDFRef, table: PDFCrossRefStream): number {
  table.updateDict();
  const content = deflate(table.getUnencodedContents());
  table.dict.set(PDFName.of('Filter'), PDFName.of('FlateDecode'));
  table.dict.set(PDFName.of('Length'), PDFNumber.of(content.length));
  const opening = ascii.encode(`${table.dict.toString()}\nstream\n`);
  return appendObject(output, ref, opening, content, ascii.encode('\nendstream'));
}

function joined({ parts, bytes }: Output): Uint8Array {
  const whole = new Uint8Array(bytes);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/**
 * The file of all objects: what pdf-lib's own writer gives, with the plain objects joined in bulk. It would size and copy each of thousands of
 * structure elements by itself.
 */
export function serialiseFile(context: PDFContext): Uint8Array {
  const output: Output = { parts: [], bytes: 0 };
  const header = PDFHeader.forVersion(1, 7);
  const opening = new Uint8Array(header.sizeInBytes() + 2).fill(0x0a);
  header.copyBytesInto(opening, 0);
  append(output, opening);
  const { Root, Info, ID } = context.trailerInfo;
  const table = PDFCrossRefStream.create(context.obj({ Root, Info, ID }), false);
  const first = context.largestObjectNumber + 1;
  const chunks: Written[][] = [];
  // Entries of the table stand in the order of object numbers.
  for (const [ref, object] of context.enumerateIndirectObjects()) {
    if (object instanceof PDFStream) {
      table.addUncompressedEntry(ref, appendStream(output, ref, object));
      continue;
    }
    let chunk = chunks.at(-1);
    if (!chunk || chunk.length === OBJECTS_PER_STREAM) {
      chunk = [];
      chunks.push(chunk);
    }
    table.addCompressedEntry(ref, PDFRef.of(first + chunks.length - 1), chunk.length);
    chunk.push([ref, object]);
  }
  for (const [i, chunk] of chunks.entries()) {
    const ref = PDFRef.of(first + i);
    table.addUncompressedEntry(ref, appendObjects(output, ref, chunk));
  }
  const tableRef = PDFRef.of(first + chunks.length);
  table.dict.set(PDFName.of('Size'), PDFNumber.of(tableRef.objectNumber + 1));
  table.addUncompressedEntry(tableRef, output.bytes);
  const tableAt = appendTable(output, tableRef, table);
  const trailer = PDFTrailer.forLastCrossRefSectionOffset(tableAt);
  const closing = new Uint8Array(trailer.sizeInBytes());
  trailer.copyBytesInto(closing, 0);
  append(output, closing);
  return joined(output);
}
