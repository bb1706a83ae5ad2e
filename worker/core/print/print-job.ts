import type { Say } from '../text/formatter.ts';
import type { PaperSize } from '../units/paper-size.ts';

/** Content to typeset. The bytes of the file depend on nothing else. */
export interface PrintJob {
  /** Each is one article of the HTML subset (`parse/subset.ts`) and starts a new page. */
  documents: readonly PrintDocument[];
  footer: { left: string; centre: string };
  header: { left: string; right: string };
  /** Words printed large and light on every page, in its footer, and inside every cut-out, such as `NOT RELEASED`. */
  mark?: string;
  paper: PaperSize;
  metadata: PrintMetadata;
  attachments: readonly PrintAttachment[];
  /** JPEG and PNG pictures, by the `src` of `<img>`, without any that `inspectAttachment` refuses. */
  images?: Readonly<Record<string, Uint8Array>>;
  /** Translates the texts that the typesetter adds: page numbers, continued tables. @default English */
  say?: Say;
}

export interface PrintDocument {
  id: string;
  title: string;
  html: string;
  /** PDF whose pages follow the document's own, each within our head and foot. It must have passed `inspectAttachment`. */
  appended?: { bytes: Uint8Array; title: string };
}

export interface PrintMetadata {
  title: string;
  subject: string;
  author: string;
  /** BCP 47 tag of the text. */
  language: string;
  /** ISO 8601 date and time with offset. */
  issuedAt: string;
  /** 32 hexadecimal digits. */
  identifier: string;
}

export interface PrintAttachment {
  name: string;
  /** The content, or the function that makes it once the number of pages is known. */
  bytes: Uint8Array | ((pages: number) => Uint8Array);
  mediaType: string;
  description: string;
  relationship: 'Source' | 'Data' | 'Supplement';
  /** Stored uncompressed, so that its content can be read and written in the finished file. @default deflated */
  isPlain?: boolean;
}

/** A range of the file: from the first byte up to the one after the last. */
export interface Part {
  name: string;
  start: number;
  end: number;
}

/** The file, and everything in the job that could not be printed unchanged. `startPage` is keyed by document id. */
export interface Printed {
  bytes: Uint8Array;
  pages: number;
  startPage: Record<string, number>;
  findings: PrintFinding[];
  /** Positions of each page's content and of each attachment in the file. */
  parts: Part[];
  /** Positions of the uncompressed attachments: all other data are before them, except the table of objects. */
  plain: Part[];
  /** Set if the file claims PDF/A-3a and PDF/UA-1: not with an appended PDF that does not conform. */
  claims: boolean;
}

/** `documentId` is empty for text outside the documents: running heads, feet and the mark. */
export type PrintFinding =
  | { code: 'TEXT_UNPRINTABLE'; documentId: string; characters: string[]; context: string }
  | { code: 'CONTENT_DOES_NOT_FIT'; documentId: string; context: string };
