/** The files that were handed to the page, by their SHA-256, as a record names them. */
export type PageFiles = Readonly<Record<string, Uint8Array>>;

/** What a page asks the core. */
export type Question = RecordQuestion | { want: 'comparison'; before: MomentRecord; now: MomentRecord };

/** A record, and the moment that it is assessed at. */
export type MomentRecord = Pick<RecordQuestion, 'record' | 'at'>;

export interface RecordQuestion {
  want: 'sheet' | 'pdf';
  /** Parsed JSON of any shape. */
  record: unknown;
  /** The moment of the assessment, ISO 8601. */
  at: string;
  files: PageFiles;
}

/** Something that stands against the record or its release. */
export interface Said {
  severity: 'blocks' | 'caution' | 'note';
  code: string;
  pointer: string;
  sentence: string;
  remedy: string;
  source?: string;
  /** What it is about, such as the name of an open item. */
  data?: Readonly<Record<string, unknown>>;
  /** The person who answers for a caution. */
  acknowledgedBy?: string | undefined;
}

/** A computed value as it is printed, and the document that has its working. */
export interface Figure {
  name: string;
  value: string;
  document: string;
}

/** What the core makes of a record. */
export interface Sheet {
  /** Whether it fits the schema; else there is nothing but what stands against it. */
  isReadable: boolean;
  isReleasable: boolean;
  findings: Said[];
  figures: Figure[];
  documents: { id: string; title: string; html: string }[];
}

/** What differs between two visits of one aircraft, in one respect. */
export interface ComparisonGroup {
  name: string;
  rows: { name: string; before: string; now: string }[];
}

export type Reply =
  | { comparison: ComparisonGroup[] }
  | { sheet: Sheet }
  | { pdf: Uint8Array<ArrayBuffer> }
  | { failure: string };
