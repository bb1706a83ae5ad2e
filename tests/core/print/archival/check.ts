import type { PdfFile } from './pdf-file.ts';

/**
 * A rule that a pack keeps, with the clause that asks for it. `defects` says what breaks it, nothing when it is kept.
 *
 * The clauses of ISO 19005-3 (`A-3`) and ISO 14289-1 (`UA-1`) are numbered as listings of their clauses and published validation profiles
 * number them, which were read in part; the rest of them, and those of ISO 32000-1, are from memory. `ours` marks what no clause asks for.
 */
export interface Check {
  name: string;
  clause: string;
  defects: (file: PdfFile) => string[];
}
