/** An object of a PDF as it was read (ISO 32000-1, 7.3). */
export type PdfObject =
  | null
  | boolean
  | number
  | PdfName
  | PdfString
  | PdfReference
  | PdfStream
  | readonly PdfObject[]
  | PdfDictionary;

export interface PdfName {
  kind: 'name';
  /** One character a byte, without the slash and with `#xx` undone. */
  name: string;
}

export interface PdfString {
  kind: 'string';
  /** One character a byte. */
  text: string;
}

export interface PdfReference {
  kind: 'reference';
  number: number;
}

export interface PdfStream {
  kind: 'stream';
  dictionary: PdfDictionary;
  /** As they stand in the file, still encoded. */
  bytes: Uint8Array;
}

export type PdfDictionary = ReadonlyMap<string, PdfObject>;

export function isDictionary(object: PdfObject | undefined): object is PdfDictionary {
  return object instanceof Map;
}

export function isArray(object: PdfObject | undefined): object is readonly PdfObject[] {
  return Array.isArray(object);
}

function isKind<Kind extends string>(object: PdfObject | undefined, kind: Kind): boolean {
  return typeof object === 'object' && object !== null && 'kind' in object && object.kind === kind;
}

export function isStream(object: PdfObject | undefined): object is PdfStream {
  return isKind(object, 'stream');
}

export function isReference(object: PdfObject | undefined): object is PdfReference {
  return isKind(object, 'reference');
}

export function isName(object: PdfObject | undefined): object is PdfName {
  return isKind(object, 'name');
}

export function isString(object: PdfObject | undefined): object is PdfString {
  return isKind(object, 'string');
}

/** The text of a name, empty for anything else. */
export function nameOf(object: PdfObject | undefined): string {
  return isName(object) ? object.name : '';
}

/** A name as an object. */
export function nameObject(name: string): PdfName {
  return { kind: 'name', name };
}

/** The dictionary of a dictionary or stream; an empty one for anything else. */
export function dictionaryOf(object: PdfObject | undefined): PdfDictionary {
  return isStream(object) ? object.dictionary : isDictionary(object) ? object : new Map();
}
