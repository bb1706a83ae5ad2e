/** Files of the page, by the SHA-256 that the record states. */
export type PageFiles = Readonly<Record<string, Uint8Array>>;

/** Question from a page to the core. */
export type Question = RecordQuestion | { want: 'comparison'; before: MomentRecord; now: MomentRecord };

/** Record, and the time at which it is assessed. */
export type MomentRecord = Pick<RecordQuestion, 'record' | 'at'>;

export interface RecordQuestion {
  want: 'sheet' | 'pdf';
  /** Parsed JSON of any shape. */
  record: unknown;
  /** Time of the assessment, ISO 8601. */
  at: string;
  files: PageFiles;
}

/** Finding about the record or its release. */
export interface Said {
  severity: 'blocks' | 'caution' | 'note';
  code: string;
  pointer: string;
  sentence: string;
  remedy: string;
  source?: string;
  /** Data of the finding, such as the name of an open item. */
  data?: Readonly<Record<string, unknown>>;
  /** Finding of which this is another place or a consequence. */
  follows?: { code: string; pointer: string } | undefined;
  /** Person who accepted a caution. */
  acknowledgedBy?: string | undefined;
}

/** Computed value as printed, and the document that shows its calculation. */
export interface Figure {
  name: string;
  value: string;
  document: string;
}

/** Assessment of a record by the core. */
export interface Sheet {
  /** Whether the record fits the schema; if not, there are only findings. */
  isReadable: boolean;
  isReleasable: boolean;
  findings: Said[];
  figures: Figure[];
  documents: { id: string; title: string; html: string }[];
}

/** Differences between two visits of one aircraft, in one respect. */
export interface ComparisonGroup {
  name: string;
  rows: { name: string; before: string; now: string }[];
}

export type Reply =
  | { comparison: ComparisonGroup[] }
  | { sheet: Sheet }
  | { pdf: Uint8Array<ArrayBuffer> }
  | { failure: string };
