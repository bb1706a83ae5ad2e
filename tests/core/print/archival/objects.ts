import {
  decodePDFRawStream,
  PDFArray,
  PDFBool,
  PDFDict,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRawStream,
  PDFString,
} from 'pdf-lib';

/** The dictionary of an object, be it one or a stream that has one. */
export function dictOf(object: PDFObject | undefined): PDFDict | undefined {
  if (object instanceof PDFRawStream) return object.dict;
  return object instanceof PDFDict ? object : undefined;
}

/** What stands at the end of a path of keys; references are followed. */
export function get(from: PDFObject | undefined, ...path: string[]): PDFObject | undefined {
  let at = from;
  for (const key of path) at = dictOf(at)?.lookup(PDFName.of(key));
  return at;
}

/** The entries of an array, references followed; nothing for any other object. */
export function listOf(object: PDFObject | undefined): (PDFObject | undefined)[] {
  return object instanceof PDFArray ? Array.from({ length: object.size() }, (_, i) => object.lookup(i)) : [];
}

/** What stands under a key, a reference unfollowed. */
export function getUnfollowed(from: PDFObject | undefined, key: string): PDFObject | undefined {
  return dictOf(from)?.get(PDFName.of(key));
}

/** The object itself, or what stands in it when it is an array; references are kept. */
export function unfollowed(object: PDFObject | undefined): PDFObject[] {
  if (object === undefined) return [];
  return object instanceof PDFArray ? object.asArray() : [object];
}

export function nameOf(object: PDFObject | undefined): string | undefined {
  return object instanceof PDFName ? object.decodeText() : undefined;
}

export function textOf(object: PDFObject | undefined): string | undefined {
  return object instanceof PDFHexString || object instanceof PDFString ? object.decodeText() : undefined;
}

export function numberOf(object: PDFObject | undefined): number | undefined {
  return object instanceof PDFNumber ? object.asNumber() : undefined;
}

export function isTrue(object: PDFObject | undefined): boolean {
  return object === PDFBool.True;
}

/** The keys of a dictionary or of a stream's dictionary. */
export function keysOf(object: PDFObject | undefined): string[] {
  return (dictOf(object)?.keys() ?? []).map((key) => key.decodeText());
}

/** The decoded content of a stream. */
export function contentOf(object: PDFObject | undefined): Uint8Array | undefined {
  return object instanceof PDFRawStream ? decodePDFRawStream(object).decode() : undefined;
}

/** Pairs of key and value of a number tree, its kids followed (ISO 32000-1, 7.9.7). Values are kept as references. */
export function numberTree(root: PDFObject | undefined): Map<number, PDFObject> {
  const pairs = unfollowed(get(root, 'Nums'));
  const entries = new Map<number, PDFObject>();
  for (let i = 0; i + 1 < pairs.length; i += 2) {
    const [key, value] = [numberOf(pairs[i]), pairs[i + 1]];
    if (key !== undefined && value) entries.set(key, value);
  }
  for (const kid of listOf(get(root, 'Kids'))) for (const [key, value] of numberTree(kid)) entries.set(key, value);
  return entries;
}
