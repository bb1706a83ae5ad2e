import { PDFArray, type PDFContext, PDFDict, PDFDocument, type PDFObject, PDFRawStream } from 'pdf-lib';
import { type Font, readFont } from './font.ts';
import { get, listOf, nameOf, unfollowed } from './objects.ts';
import { type PageContent, readContent } from './page-content.ts';
import { elementsOf, type StructureElement } from './structure-tree.ts';

export interface Page {
  /** Its object, as `12 0 R`. */
  reference: string;
  dict: PDFDict;
  content: PageContent;
}

/** A finished file, opened for the checks. */
export interface PdfFile {
  bytes: Uint8Array;
  context: PDFContext;
  catalogue: PDFDict;
  information: PDFObject | undefined;
  pages: Page[];
  elements: StructureElement[];
  fonts: Font[];
  /** Every object of the file and everything within it, each once. */
  objects: PDFObject[];
}

/** Every dictionary, array and other object that stands in another, the other included. */
function within(object: PDFObject): PDFObject[] {
  if (object instanceof PDFRawStream) return [object, ...object.dict.values().flatMap(within)];
  if (object instanceof PDFDict) return [object, ...object.values().flatMap(within)];
  const parts = unfollowed(object);
  return parts[0] === object ? [object] : [object, ...parts.flatMap(within)];
}

/** Opens a file. Throws when it cannot be read at all. */
export async function openPdf(bytes: Uint8Array): Promise<PdfFile> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false, ignoreEncryption: true });
  const { context, catalog } = document;
  const objects = context.enumerateIndirectObjects().flatMap(([, object]) => within(object));
  const fontDicts = objects.filter(
    (object): object is PDFDict =>
      object instanceof PDFDict &&
      nameOf(get(object, 'Type')) === 'Font' &&
      !/^CIDFont/.test(nameOf(get(object, 'Subtype')) ?? ''),
  );
  const pages = document.getPages().map(({ node, ref }) => {
    const contents = get(node, 'Contents');
    const parts = contents instanceof PDFArray ? listOf(contents) : [contents];
    return { reference: ref.toString(), dict: node, content: readContent(parts, node.Resources()) };
  });
  return {
    bytes,
    context,
    catalogue: catalog,
    information: context.lookup(context.trailerInfo.Info),
    pages,
    elements: elementsOf(get(catalog, 'StructTreeRoot'), context),
    fonts: fontDicts.map(readFont),
    objects,
  };
}
