import { decodePDFRawStream, PDFDict, PDFDocument, PDFName, type PDFObject, PDFRawStream } from 'pdf-lib';
import { latin1 } from './pdf-of.ts';

/** A stream of a written file: its dictionary as text and its bytes as they stand. */
export interface WrittenStream {
  dictionary: string;
  bytes: Uint8Array;
  decode: () => string;
}

/** What is looked at in a written file, by another reader than ours. */
export interface WrittenFile {
  /** Content of each page. */
  contents: string[];
  /** All streams whose subtype is the given one. */
  streams: (subtype: 'Image' | 'Form') => WrittenStream[];
  /** All objects that are no streams, as text. */
  objects: string[];
}

const written = (stream: PDFRawStream): WrittenStream => ({
  dictionary: stream.dict.toString(),
  bytes: stream.contents,
  decode: () => latin1(decodePDFRawStream(stream).decode()),
});

/** Opens a written file. */
export async function readFile(bytes: Uint8Array): Promise<WrittenFile> {
  const file = await PDFDocument.load(bytes, { updateMetadata: false });
  const objects = file.context.enumerateIndirectObjects().map(([, object]): PDFObject => object);
  const streams = objects.filter((object) => object instanceof PDFRawStream);
  return {
    contents: file.getPages().map((page) => {
      const stream = file.context.lookup(page.node.get(PDFName.of('Contents')));
      return stream instanceof PDFRawStream ? written(stream).decode() : '';
    }),
    streams: (subtype) =>
      streams.filter(({ dict }) => dict.get(PDFName.of('Subtype')) === PDFName.of(subtype)).map(written),
    objects: objects.filter((object) => object instanceof PDFDict).map((object) => object.toString()),
  };
}
